package org.longsummer.wire;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.Temperature;

/**
 * The texts of a form by the names of its boxes. Reads one box after another and collects what is wrong, so that all problems can be
 * named at once. A box that is missing, blank or wrong is answered with nothing.
 */
public final class Boxes {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)");
    private static final Pattern GROUPED = Pattern.compile("[+-]?\\d{1,3}([., ]\\d{3})+");
    private static final Pattern DAY = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})");
    private static final Pattern MOMENT = Pattern.compile("(\\d{4}-\\d{2}-\\d{2})T(\\d{2}):(\\d{2})(:(\\d{2})(?:\\.(\\d{1,9}))?)?");
    private static final String ALONE = "Type the number alone, with a point or a comma before the decimals.";

    private final Map<String, String> texts;
    private final List<Problem> problems = new ArrayList<>();

    public Boxes(Map<String, String> texts) {
        this.texts = texts;
    }

    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    public void refuse(String box, String limit, String remedy) {
        problems.add(new Problem(box, text(box).orElse(""), limit, remedy));
    }

    public Optional<String> text(String box) {
        return Optional.ofNullable(texts.get(box)).map(String::strip).filter(text -> !text.isEmpty());
    }

    /** Whether a box is there, filled or not. */
    public boolean has(String box) {
        return texts.containsKey(box);
    }

    /** A text of at most so many characters. */
    public String text(String box, int longest) {
        String text = text(box).orElse("");
        if (text.length() > longest) {
            refuse(box, "At most " + longest + " characters fit here.", "Shorten it.");
        }
        return text;
    }

    /** A reading, with decimal point or decimal comma. */
    public Optional<Double> number(String box, double least, double most, String unit) {
        return text(box).flatMap(text -> {
            String plain = text.replace('\u2212', '-').replace("\u00a0", "").replace(" ", "");
            if (!NUMBER.matcher(plain).matches()) {
                refuse(box, "A number in " + unit + " belongs here.", ALONE);
                return Optional.empty();
            }
            return within(box, Double.parseDouble(plain.replace(',', '.')), least, most, unit);
        });
    }

    /** A large number, whose thousands may be set apart: 13,500 is thirteen thousand five hundred. */
    public Optional<Double> largeNumber(String box, double least, double most, String unit) {
        Optional<String> text = text(box);
        if (text.filter(given -> GROUPED.matcher(given).matches()).isPresent()) {
            return within(box, Double.parseDouble(text.get().replaceAll("[., ]", "")), least, most, unit);
        }
        return number(box, least, most, unit);
    }

    private Optional<Double> within(String box, double number, double least, double most, String unit) {
        if (number < least || number > most) {
            refuse(box, "Between " + plain(least) + " and " + plain(most) + " " + unit + " can be taken here.",
                    "Check the number and its decimal point.");
            return Optional.empty();
        }
        return Optional.of(number);
    }

    private static String plain(double number) {
        return Decimal.text(number, number == (long) number ? 0 : 2);
    }

    /** A temperature from the box whose name ends in its unit, {@code _f} or {@code _c}. */
    public Optional<Temperature> temperature(String name) {
        if (text(name + "_f").isPresent()) {
            return number(name + "_f", -400, 2000, "°F").map(Temperature::fahrenheit);
        }
        return number(name + "_c", -240, 1100, "°C").map(Temperature::celsius);
    }

    public Optional<LocalDate> day(String box) {
        return text(box).flatMap(text -> {
            try {
                return Optional.of(dayOf(text));
            } catch (DateTimeException e) {
                refuse(box, "A day such as 2026-07-02 belongs here.", "Type year, month and day, or leave it empty.");
                return Optional.empty();
            }
        });
    }

    /**
     * Year, month and day with dashes.
     *
     * @throws DateTimeException when it is no day
     */
    static LocalDate dayOf(String text) {
        Matcher day = DAY.matcher(text);
        if (!day.matches()) {
            throw new DateTimeException("no day: " + text);
        }
        return LocalDate.of(Integer.parseInt(day.group(1)), Integer.parseInt(day.group(2)), Integer.parseInt(day.group(3)));
    }

    /**
     * A day and the time on its clock, with or without seconds.
     *
     * @throws DateTimeException when it is none
     */
    static LocalDateTime momentOf(String text) {
        Matcher moment = MOMENT.matcher(text);
        if (!moment.matches()) {
            throw new DateTimeException("no day and time: " + text);
        }
        String fraction = moment.group(6) == null ? "0" : (moment.group(6) + "00000000").substring(0, 9);
        return dayOf(moment.group(1)).atTime(Integer.parseInt(moment.group(2)), Integer.parseInt(moment.group(3)),
                moment.group(5) == null ? 0 : Integer.parseInt(moment.group(5)), Integer.parseInt(fraction));
    }

    /** One of an enumeration's words, in lower case. */
    public <E extends Enum<E>> E choice(String box, Class<E> kind, E whenEmpty) {
        Optional<String> text = text(box);
        for (E constant : kind.getEnumConstants()) {
            if (text.filter(given -> given.equals(word(constant))).isPresent()) {
                return constant;
            }
        }
        if (text.isPresent()) {
            refuse(box, "One of " + words(kind) + " can be chosen here.", "Choose one of them, or leave it empty.");
        }
        return whenEmpty;
    }

    /** Several of an enumeration's words, with commas between. */
    public <E extends Enum<E>> Set<E> choices(String box, Class<E> kind) {
        Set<E> chosen = new TreeSet<>();
        for (String given : text(box).orElse("").split("[,\\s]+")) {
            if (!given.isEmpty()) {
                List<E> match = List.of(kind.getEnumConstants()).stream().filter(constant -> word(constant).equals(given)).toList();
                if (match.isEmpty()) {
                    refuse(box, "Any of " + words(kind) + " can be chosen here.", "Choose from them.");
                }
                chosen.addAll(match);
            }
        }
        return chosen;
    }

    public boolean isYes(String box) {
        return text(box).filter("yes"::equals).isPresent();
    }

    /** The word of a choice in a form and in JSON. */
    public static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT);
    }

    private static String words(Class<? extends Enum<?>> kind) {
        return String.join(", ", List.of(kind.getEnumConstants()).stream().map(Boxes::word).toList());
    }
}
