package org.longsummer.access;

import java.text.Normalizer;
import java.util.Locale;

/**
 * Somebody with an account. People are never removed, only closed, so that what the record says they did stays theirs.
 *
 * @param id made by the program, never used again
 * @param name by which he signs in and stands in the record; never changes, and no two people have the same
 * @param role what he may do
 * @param reach which depots he sees
 * @param active may sign in
 * @param hasPassword has chosen a password
 */
public record Person(String id, String name, Role role, Reach reach, boolean active, boolean hasPassword) {
    /** Characters of a name, at most. */
    public static final int LONGEST_NAME = 80;

    /** A name without what people overlook: case, width and repeated blanks. Names that fold alike are the same. */
    public static String folded(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKC).strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
