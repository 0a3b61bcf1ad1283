package org.longsummer.web;

/** What others typed, as it may stand in the program's log: on one line, without what a terminal would obey, and not without end. */
final class Logged {
    private static final int LONGEST = 120;

    private Logged() {}

    static String text(String typed) {
        String line = typed.replaceAll("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]", "?");
        return "“" + (line.length() > LONGEST ? line.substring(0, LONGEST) + "…" : line) + "”";
    }
}
