package org.longsummer.endurance;

import org.longsummer.evidence.Project;

/** How long the tests of this package go on, and where they say what they saw. */
final class Endurance {
    private static final boolean LONG = Boolean.getBoolean("endurance");

    private Endurance() {}

    /** This run is the long one. */
    static boolean isLong() {
        return LONG;
    }

    /** So many rounds in every build, so many in the long run; {@code -Dendurance.rounds=N} overrides both. */
    static int rounds(int usual, int enduring) {
        return Integer.getInteger("endurance.rounds", LONG ? enduring : usual);
    }

    /** What a test saw, for the page of the long run; of a short run nothing is kept. */
    static void record(String what, String seen) {
        if (LONG) {
            Project.write(Project.EVIDENCE.resolve("endurance").resolve(what.replaceAll("\\W+", "-")), what + "\t" + seen + "\n");
        }
    }
}
