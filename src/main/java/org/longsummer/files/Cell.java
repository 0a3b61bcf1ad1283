package org.longsummer.files;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from running what people wrote: a text that begins like a formula gets an apostrophe, and loses it on reading.
 * The beginnings are those that OWASP ASVS 5.0, 1.2.10, names, the wide forms that some programs read alike, and line ends.
 */
final class Cell {
    private static final String BEGINNING = "[=+\\-@\\t\\r\\n\\x00\uFF1D\uFF0B\uFF0D\uFF20].*";
    private static final Pattern RUNNABLE = Pattern.compile("'*" + BEGINNING, Pattern.DOTALL);
    private static final Pattern ESCAPED = Pattern.compile("'+" + BEGINNING, Pattern.DOTALL);

    private Cell() {}

    static String escaped(String text) {
        return RUNNABLE.matcher(text).matches() ? "'" + text : text;
    }

    static String unescaped(String text) {
        return text.isEmpty() || text.charAt(0) != '\'' ? text : ESCAPED.matcher(text).matches() ? text.substring(1) : text;
    }
}
