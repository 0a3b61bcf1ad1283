package org.longsummer.files;

import java.util.regex.Pattern;

/** Keeps a spreadsheet from running what people wrote: a text that begins like a formula gets an apostrophe, and loses it on reading. */
final class Cell {
    private static final Pattern RUNNABLE = Pattern.compile("'*[=+\\-@\\t\\r].*", Pattern.DOTALL);
    private static final Pattern ESCAPED = Pattern.compile("'+[=+\\-@\\t\\r].*", Pattern.DOTALL);

    private Cell() {}

    static String escaped(String text) {
        return RUNNABLE.matcher(text).matches() ? "'" + text : text;
    }

    static String unescaped(String text) {
        return ESCAPED.matcher(text).matches() ? text.substring(1) : text;
    }
}
