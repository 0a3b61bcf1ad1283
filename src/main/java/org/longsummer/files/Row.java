package org.longsummer.files;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.longsummer.quantity.Temperature;

/** The texts of one row, read as what they stand for; what cannot be read is noted as a problem. */
final class Row {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d*,\\d+");
    /** Letters of a text; more were never written by hand. */
    private static final int LONGEST = 4_000;
    /** So many characters surely fit an int. */
    private static final int SHORT = 9;
    private static final double[] POWERS_OF_TEN = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8};
    /** No meter shows as much; it would only be a mistyped text. */
    private static final double LARGEST = 1e9;
    private static final String YEARS = "the year must lie between 1900 and 2199";
    private static final int USUAL_MOMENT_LENGTH = 25;

    private final String file;
    private final long number;
    private final UnaryOperator<String> texts;
    private final boolean decimalCommas;
    private final Findings findings;
    private boolean asTyped;
    private boolean sound = true;
    private List<Problem> held;

    /**
     * @param file name of the file, for problems
     * @param number row as a spreadsheet counts it
     * @param texts text by column; null or blank where there is none
     * @param decimalCommas whether {@code 72,8} is a number
     * @param findings where problems go
     */
    Row(String file, long number, UnaryOperator<String> texts, boolean decimalCommas, Findings findings) {
        this.file = file;
        this.number = number;
        this.texts = texts;
        this.decimalCommas = decimalCommas;
        this.findings = findings;
    }

    /** Numbers stand as somebody typed them into a form: with a comma or a point, with blanks or without. */
    void readsNumbersAsTyped() {
        asTyped = true;
    }

    long number() {
        return number;
    }

    /** Nothing was wrong so far. */
    boolean isSound() {
        return sound;
    }

    /** The text without surrounding blanks; empty when there is none. */
    String text(String column) {
        String text = texts.apply(column);
        return text == null ? "" : text.strip();
    }

    /** A text that people wrote, without the mark that keeps spreadsheets from running it. */
    String words(String column) {
        String text = text(column);
        if (text.length() > LONGEST) {
            problem(column, text, "at most " + LONGEST + " letters can be kept; shorten it");
            return "";
        }
        return Cell.unescaped(text);
    }

    void problem(String column, String given, String remedy) {
        sound = false;
        Problem problem = new Problem(file, number, column, given, remedy);
        if (held == null) {
            findings.add(problem);
        } else {
            held.add(problem);
        }
    }

    /** From now on its problems are not noted but held. */
    void holdProblems() {
        held = new ArrayList<>(0);
    }

    /** What was held; from now on its problems are noted again. */
    List<Problem> heldProblems() {
        List<Problem> all = held;
        held = null;
        return all;
    }

    /** A text that must be there. */
    String required(String column, String remedy) {
        String text = words(column);
        if (text.isEmpty()) {
            problem(column, "", remedy);
        }
        return text;
    }

    <T> Optional<T> quantity(String column, DoubleFunction<T> make) {
        String text = text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> value = decimal(text);
        if (value.isEmpty()) {
            problem(column, text, DECIMAL_COMMA.matcher(text).matches()
                    ? "write the number with a decimal point, such as 12.4"
                    : "write a number such as 12.4, or leave it empty when it was not read");
        }
        return value.map(make::apply);
    }

    private Optional<Double> decimal(String text) {
        double plain = plain(text);
        if (plain >= 0) {
            return Optional.of(plain);
        }
        String spaceless = asTyped ? text.replace('\u2212', '-').replace("\u00a0", "").replace(" ", "") : text;
        String pointed = (decimalCommas || asTyped) && DECIMAL_COMMA.matcher(spaceless).matches() ? spaceless.replace(',', '.') : spaceless;
        if (!NUMBER.matcher(pointed).matches()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(pointed);
        return Math.abs(value) < LARGEST ? Optional.of(value) : Optional.empty();
    }

    /**
     * A short number without a sign, as nearly all are; negative when it is no such. Its digits and the power of ten are exact, so that
     * their quotient is the nearest number there is.
     */
    private static double plain(String text) {
        int length = text.length();
        int point = text.indexOf('.');
        int digits = 0;
        for (int i = 0; i < length; i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                digits = 10 * digits + c - '0';
            } else if (i != point) {
                return -1;
            }
        }
        boolean fits = length <= SHORT && length > (point < 0 ? 0 : 1);
        return fits ? digits / POWERS_OF_TEN[point < 0 ? 0 : length - 1 - point] : -1;
    }

    /** A temperature in whichever of its two columns, {@code _f} or {@code _c}, it was given. */
    Optional<Temperature> temperature(String stem) {
        Optional<Temperature> fahrenheit = quantity(stem + "_f", Temperature::fahrenheit);
        Optional<Temperature> celsius = quantity(stem + "_c", Temperature::celsius);
        if (fahrenheit.isPresent() && celsius.isPresent()) {
            problem(stem + "_c", text(stem + "_c"), stem + "_f is given too; leave one of the two empty");
        }
        return fahrenheit.or(() -> celsius);
    }

    <E extends Enum<E>> E choice(String column, Class<E> type, E whenEmpty) {
        String text = text(column);
        if (text.isEmpty()) {
            return whenEmpty;
        }
        for (E value : type.getEnumConstants()) {
            if (value != whenEmpty && word(value).equalsIgnoreCase(text)) {
                return value;
            }
        }
        problem(column, text, "write one of " + words(type, whenEmpty) + ", or leave it empty when it is not known");
        return whenEmpty;
    }

    /** Any word of a choice, also the one that an empty cell stands for. */
    <E extends Enum<E>> E word(String column, Class<E> type, E whenEmpty) {
        return text(column).isEmpty() ? whenEmpty : Optional.ofNullable(choice(column, type, null)).orElse(whenEmpty);
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static <E extends Enum<E>> String words(Class<E> type, E whenEmpty) {
        return Arrays.stream(type.getEnumConstants()).filter(value -> value != whenEmpty).map(Row::word)
                .collect(Collectors.joining(", "));
    }

    Optional<Boolean> yesOrNo(String column) {
        String text = text(column).toLowerCase(Locale.ROOT);
        switch (text) {
            case "": return Optional.empty();
            case "yes", "true", "1": return Optional.of(true);
            case "no", "false", "0": return Optional.of(false);
            default:
                problem(column, text(column), "write yes or no, or leave it empty when it is not known");
                return Optional.empty();
        }
    }

    Optional<LocalDate> day(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            LocalDate day = LocalDate.parse(text);
            if (isOfAnAge(day.getYear())) {
                return Optional.of(day);
            }
            problem(column, text, YEARS);
            return Optional.empty();
        } catch (DateTimeException e) {
            problem(column, text, "write the day as year-month-day, such as 2024-05-11, or leave it empty when it is not known");
            return Optional.empty();
        }
    }

    /** A moment with its offset from UTC, where there is one. */
    Optional<OffsetDateTime> optionalMoment(String column) {
        return text(column).isEmpty() ? Optional.empty() : moment(column);
    }

    /** A moment with its offset from UTC, which must be there. */
    Optional<OffsetDateTime> moment(String column) {
        String text = text(column);
        try {
            if (!text.isEmpty()) {
                return withinAges(column, text, USUAL_MOMENT_LENGTH == text.length() && text.charAt(10) == 'T' ? usualMoment(text)
                        : OffsetDateTime.parse(text.replaceFirst("^(\\S{10})\\s+", "$1T")));
            }
        } catch (DateTimeException e) {
            // named below, with the missing ones
        }
        problem(column, text, "write day, time and offset from UTC, such as 2024-05-11T12:46:00-07:00; without a time a visit cannot be placed");
        return Optional.empty();
    }

    private Optional<OffsetDateTime> withinAges(String column, String text, OffsetDateTime moment) {
        if (isOfAnAge(moment.getYear())) {
            return Optional.of(moment);
        }
        problem(column, text, YEARS);
        return Optional.empty();
    }

    /** Machines were not cooled before, and nobody plans so far ahead; what is stored in milliseconds has its limits too. */
    private static boolean isOfAnAge(int year) {
        return year >= 1900 && year < 2200;
    }

    /** Such as 2024-05-11T12:46:00-07:00: read by place, since a general reader takes longer than all the rest of a row. */
    private static OffsetDateTime usualMoment(String text) {
        boolean separated = text.charAt(4) == '-' && text.charAt(7) == '-' && text.charAt(13) == ':' && text.charAt(16) == ':'
                && text.charAt(22) == ':' && (text.charAt(19) == '+' || text.charAt(19) == '-');
        int hours = pair(text, 20);
        int minutes = pair(text, 23);
        if (!separated || (pair(text, 0) | pair(text, 2) | pair(text, 5) | pair(text, 8) | pair(text, 11) | pair(text, 14) | pair(text, 17)
                | hours | minutes) < 0) {
            return OffsetDateTime.parse(text);
        }
        int sign = text.charAt(19) == '-' ? -1 : 1;
        return OffsetDateTime.of(100 * pair(text, 0) + pair(text, 2), pair(text, 5), pair(text, 8), pair(text, 11), pair(text, 14),
                pair(text, 17), 0, ZoneOffset.ofHoursMinutes(sign * hours, sign * minutes));
    }

    /** The number of two digits; negative when there are none. */
    private static int pair(String text, int at) {
        int tens = text.charAt(at) - '0';
        int ones = text.charAt(at + 1) - '0';
        return tens < 0 || tens > 9 || ones < 0 || ones > 9 ? -1 : 10 * tens + ones;
    }
}
