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
    private static final Map<String, String> UNITS = units();
    private static final Pattern ENDING = Pattern.compile("(.*\\d[.,]?)\\s*(\\D+)", Pattern.DOTALL);
    private static final Pattern MONEY = Pattern.compile("[$\u20ac\u00a3]\\s*(.+)|(.+?)\\s*[$\u20ac\u00a3]");

    private NumberForm() {}

    private static Map<String, String> units() {
        Map<String, String> units = new LinkedHashMap<>();
        units.put(".*_f", "(\u00b0|deg)?\\s*f");
        units.put(".*_c", "(\u00b0|deg)?\\s*c");
        units.put(".*_pct", "%|percent|% ?rh|rh");
        units.put(".*amps|.*_a", "a|amps?|amperes?");
        units.put("volts.*|.*volts|.*_v", "v|volts?|v ?ac");
        units.put("run_minutes", "min\\.?|mins|minutes?");
        units.put(".*_uf", "[\u00b5\u03bcu]f|mfd");
        units.put(".*_btuh", "btu ?/ ?hr?|btuh?|btu per hour");
        units.put(".*_ft", "ft\\.?|feet|'");
        units.put(".*_m", "m|met(re|er)s?");
        units.put("run_hours_.*", "h|hours?");
        return units;
    }

    /** The text without the unit of measure that its column has, and without what spreadsheets put around it. */
    static String bare(String cell, String column) {
        String text = cell.strip().replace('\u2212', '-');
        if (column.equals("price") || column.equals("value")) {
            Matcher money = MONEY.matcher(text);
            text = money.matches() ? (money.group(1) == null ? money.group(2) : money.group(1)).strip() : text;
        }
        Matcher ending = ENDING.matcher(text);
        if (ending.matches()) {
            String unit = ending.group(2).strip().toLowerCase(java.util.Locale.ROOT);
            String number = ending.group(1).strip();
            for (Map.Entry<String, String> known : UNITS.entrySet()) {
                text = column.matches(known.getKey()) && unit.matches(known.getValue()) ? number : text;
            }
        }
        Matcher grouped = GROUPED.matcher(text);
        return grouped.matches() ? grouped.group(1).replaceAll("[ '\u2019\u00a0\u2009\u202f]", "") + grouped.group(2) : text;
    }

    /** @param bare without a unit of measure */
    static Shows shows(String bare) {
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
