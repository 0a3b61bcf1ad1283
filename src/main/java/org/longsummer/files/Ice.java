package org.longsummer.files;

import java.util.Locale;
import java.util.regex.Pattern;

/** Frost or ice on the coil, as far as a note says so in English. */
final class Ice {
    private static final Pattern MENTIONED = Pattern.compile("\\b(frost\\w*|ice|iced|icy|icing|froze|frozen|freez\\w*)\\b");
    private static final Pattern NOT_MEANT = Pattern.compile(
            "\\b(no|not|without|never|free of|clear of)( (any|sign of|signs of))?( (frost\\w*|ice[ds]?|icing|frozen|freez\\w*))(( or|,|/) ?(frost|ice))?\\b"
            + "|\\bice[ -](bath|water|point|box|chest|maker|cream)\\b|\\b(frost|ice)[ -]free\\b|\\bde-?(frost|ic)\\w*\\b");

    private Ice() {}

    static boolean isMentioned(String note) {
        if (note.isEmpty()) {
            return false;
        }
        return MENTIONED.matcher(NOT_MEANT.matcher(note.toLowerCase(Locale.ROOT)).replaceAll(" ")).find();
    }
}
