package org.longsummer.access;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a person is here. */
public enum Role {
    TECHNICIAN(Right.VISIT),
    MANAGER(Right.LOOK_AFTER),
    ADMINISTRATOR(Right.ADMINISTER);

    private final Right right;

    Role(Right right) {
        this.right = right;
    }

    /** The most that this role may do. */
    public Right right() {
        return right;
    }

    /** Its word in the store, in JSON and on the command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Role> ofWord(String word) {
        return Stream.of(values()).filter(role -> role.word().equals(word)).findFirst();
    }
}
