package org.longsummer.files;

/** Told of each step of long work. */
public interface Progress {
    /** Nobody listens. */
    Progress SILENT = what -> { };

    /**
     * One more of something is done.
     *
     * @param what in the plural, with what was done to it, such as {@code visits read}
     */
    void step(String what);

    /** So many more of something are done. */
    default void steps(String what, int count) {
        for (int i = 0; i < count; i++) {
            step(what);
        }
    }
}
