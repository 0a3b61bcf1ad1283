package org.longsummer.store;

import java.util.Optional;

/**
 * Who changes something, as the journal will say.
 *
 * @param name the person's name; of somebody who is not signed in, what he typed
 * @param personId of a person with an account
 * @param way how it is known to be him: {@code signed in}, {@code phone}, {@code program ...}, {@code typed}, {@code command line}
 */
public record Actor(String name, Optional<String> personId, String way) {
    /** Work that nobody asked for, such as closing a day. */
    public static final Actor ITSELF = new Actor("Longsummer", Optional.empty(), "itself");
}
