package org.longsummer.store;

import java.time.Instant;
import java.util.Optional;

/**
 * One line of the journal.
 *
 * @param id its place in the order of the lines
 * @param at when
 * @param who the name
 * @param way how it is known to be him
 * @param about which table, or {@code session} for a sign-in
 * @param aboutId which row of it
 * @param unitId the unit it concerns, where it does
 * @param event {@code added}, {@code changed}, {@code removed}, or what happened
 * @param before the columns that differ as they were, as JSON; absent when the row was not there
 * @param after the same columns as they are now; absent when the row was added or removed
 */
public record JournalLine(long id, Instant at, String who, String way, String about, String aboutId, Optional<String> unitId, String event,
        Optional<String> before, Optional<String> after) {}
