package org.longsummer.files;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers as spreadsheets of many countries write them: point or comma before the decimals, points, commas, spaces or apostrophes between
 * thousands, a unit of measure behind. A text that can be meant in two ways, such as {@code 13,500}, is not decided here.
 */
final class NumberForm {
    /** What a text shows about the sign before the decimals. */
    enum Shows { NOTHING, POINT, COMMA, EITHER, NO_NUMBER }

    private static final String SIGN = "[+-]?";
    private static final Pattern WHOLE = Pattern.compile(SIGN + "\\d+");
    private static final Pattern GROUPED = Pattern.compile("(" + SIGN + "\\d{1,3}(?:[ '\u2019\u00a0\u2009\u202f]\\d{3})+)((?:[.,]\\d+)?)");
    private static final Pattern BOTH_POINT = Pattern.compile(SIGN + "\\d{1,3}(,\\d{3})+\\.\\d+|" + SIGN + "\\d{1,3}(,\\d{3}){2,}");
    private static final Pattern BOTH_COMMA = Pattern.compile(SIGN + "\\d{1,3}(\\.\\d{3})+,\\d+|" + SIGN + "\\d{1,3}(\\.\\d{3}){2,}");
    private static final Pattern EITHER = Pattern.compile(SIGN + "[1-9]\\d{0,2}[.,]\\d{3}");
    private static final Pattern COMMA = Pattern.compile(SIGN + "\\d*,\\d+");
    private static final Pattern POINT = Pattern.compile(SIGN + "(\\d+\\.\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?|" + SIGN + "\\d+[eE][+-]?\\d{1,3}");
    private static final Map<Pattern, Pattern> UNITS = units();
    private static final Pattern ENDING = Pattern.compile("(.*\\d[.,]?)\\s*(\\D+)", Pattern.DOTALL);
    private static final Pattern MONEY = Pattern.compile("[$\u20ac\u00a3]\\s*(.+)|(.+?)\\s*[$\u20ac\u00a3]");

    private NumberForm() {}

    private static Map<Pattern, Pattern> units() {
        Map<Pattern, Pattern> units = new LinkedHashMap<>();
        units.put(Pattern.compile(".*_f"), Pattern.compile("(\u00b0|deg)?\\s*f"));
        units.put(Pattern.compile(".*_c"), Pattern.compile("(\u00b0|deg)?\\s*c"));
        units.put(Pattern.compile(".*_pct"), Pattern.compile("%|percent|% ?rh|rh"));
        units.put(Pattern.compile(".*amps|.*_a"), Pattern.compile("a|amps?|amperes?"));
        units.put(Pattern.compile("volts.*|.*volts|.*_v"), Pattern.compile("v|volts?|v ?ac"));
        units.put(Pattern.compile("run_minutes"), Pattern.compile("min\\.?|mins|minutes?"));
        units.put(Pattern.compile(".*_uf"), Pattern.compile("[\u00b5\u03bcu]f|mfd"));
        units.put(Pattern.compile(".*_btuh"), Pattern.compile("btu ?/ ?hr?|btuh?|btu per hour"));
        units.put(Pattern.compile(".*_ft"), Pattern.compile("ft\\.?|feet|'"));
        units.put(Pattern.compile(".*_m"), Pattern.compile("m|met(re|er)s?"));
        units.put(Pattern.compile("run_hours_.*"), Pattern.compile("h|hours?"));
        return units;
    }

    /** The text without the unit of measure that its column has, and without what spreadsheets put around it. */
    static String bare(String cell, String column) {
        if (isBare(cell)) {
            return cell;
        }
        String text = cell.strip().replace('\u2212', '-');
        if (column.equals("price") || column.equals("value")) {
            Matcher money = MONEY.matcher(text);
            text = money.matches() ? (money.group(1) == null ? money.group(2) : money.group(1)).strip() : text;
        }
        Matcher ending = ENDING.matcher(text);
        if (ending.matches()) {
            String unit = ending.group(2).strip().toLowerCase(java.util.Locale.ROOT);
            String number = ending.group(1).strip();
            for (Map.Entry<Pattern, Pattern> known : UNITS.entrySet()) {
                text = known.getKey().matcher(column).matches() && known.getValue().matcher(unit).matches() ? number : text;
            }
        }
        Matcher grouped = GROUPED.matcher(text);
        return grouped.matches() ? grouped.group(1).replaceAll("[ '\u2019\u00a0\u2009\u202f]", "") + grouped.group(2) : text;
    }

    /** Digits, points and commas only, as nearly all numbers are. */
    private static boolean isBare(String cell) {
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if ((c < '0' || c > '9') && c != '.' && c != ',') {
                return false;
            }
        }
        return true;
    }

    /** @param bare without a unit of measure */
    static Shows shows(String bare) {
        int point = bare.indexOf('.');
        int comma = bare.indexOf(',');
        int mark = Math.max(point, comma);
        boolean isBrief = isBare(bare) && Math.min(point, comma) < 0 && mark > 0 && bare.lastIndexOf(bare.charAt(mark)) == mark;
        int decimals = bare.length() - mark - 1;
        if (isBrief && decimals > 0 && decimals != 3) {
            return comma < 0 ? Shows.POINT : Shows.COMMA;
        }
        return showsLong(bare);
    }

    private static Shows showsLong(String bare) {
        if (WHOLE.matcher(bare).matches()) {
            return Shows.NOTHING;
        }
        if (EITHER.matcher(bare).matches()) {
            return Shows.EITHER;
        }
        if (POINT.matcher(bare).matches() || BOTH_POINT.matcher(bare).matches()) {
            return Shows.POINT;
        }
        return COMMA.matcher(bare).matches() || BOTH_COMMA.matcher(bare).matches() ? Shows.COMMA : Shows.NO_NUMBER;
    }

    /**
     * The number as files of ours have it; a decimal comma stays one, as it was typed.
     *
     * @param comma whether what can be meant in two ways has a decimal comma
     * @return empty when it is no number
     */
    static Optional<String> plain(String bare, boolean comma) {
        return switch (shows(bare)) {
            case NO_NUMBER -> Optional.empty();
            case NOTHING -> Optional.of(bare);
            case POINT -> Optional.of(bare.replace(",", ""));
            case COMMA -> Optional.of(withoutPoints(bare));
            case EITHER -> Optional.of(bare.indexOf(',') >= 0 ? (comma ? bare : bare.replace(",", "")) : comma ? bare.replace(".", "") : bare);
        };
    }

    private static String withoutPoints(String bare) {
        return bare.indexOf('.') < 0 ? bare : bare.replace(".", "").replace(',', '.');
    }
}
