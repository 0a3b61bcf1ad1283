package org.longsummer.store;

import java.time.Instant;
import java.util.Optional;
import org.longsummer.access.Reach;
import org.longsummer.access.Right;

/**
 * A program that acts for somebody by a key of its own. It may never do more than the person may at that moment.
 *
 * @param id by which it is listed and withdrawn; it opens nothing
 * @param personId for whom it acts
 * @param name what the person calls it
 * @param most the most that it may do; never {@link Right#ADMINISTER}
 * @param reach the depots within the person's own to which it is limited
 * @param made when its key was made
 * @param ends when its key ends
 * @param used when it was last used, to within five minutes; absent when never
 */
public record Program(String id, String personId, String name, Right most, Reach reach, Instant made, Instant ends, Optional<Instant> used) {}
