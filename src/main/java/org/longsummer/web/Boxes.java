package org.longsummer.web;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.longsummer.quantity.Temperature;

/**
 * The texts of a form by the names of its boxes. Reads one box after another and collects what is wrong, so that all problems can be
 * named at once. A box that is missing, blank or wrong is answered with nothing.
 */
final class Boxes {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)");
    private static final Pattern GROUPED = Pattern.compile("[+-]?\\d{1,3}([., ]\\d{3})+");
    private static final String ALONE = "Type the number alone, with a point or a comma before the decimals.";

    private final Map<String, String> texts;
    private final List<Problem> problems = new ArrayList<>();

    Boxes(Map<String, String> texts) {
        this.texts = texts;
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    void refuse(String box, String limit, String remedy) {
        problems.add(new Problem(box, text(box).orElse(""), limit, remedy));
    }

    /** Ends the reading when anything is wrong. */
    void refuseIfWrong() {
        if (!problems.isEmpty()) {
            throw new Refused(422, problems);
        }
    }

    Optional<String> text(String box) {
        return Optional.ofNullable(texts.get(box)).map(String::strip).filter(text -> !text.isEmpty());
    }

    /** A text of at most so many characters. */
    String text(String box, int longest) {
        String text = text(box).orElse("");
        if (text.length() > longest) {
            refuse(box, "At most " + longest + " characters fit here.", "Shorten it.");
        }
        return text;
    }

    /** A reading, with decimal point or decimal comma. */
    Optional<Double> number(String box, double least, double most, String unit) {
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
    Optional<Double> largeNumber(String box, double least, double most, String unit) {
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
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }

    /** A temperature from the box whose name ends in its unit, {@code _f} or {@code _c}. */
    Optional<Temperature> temperature(String name) {
        if (text(name + "_f").isPresent()) {
            return number(name + "_f", -400, 2000, "°F").map(Temperature::fahrenheit);
        }
        return number(name + "_c", -240, 1100, "°C").map(Temperature::celsius);
    }

    Optional<LocalDate> day(String box) {
        return text(box).flatMap(text -> {
            try {
                return Optional.of(LocalDate.parse(text));
            } catch (DateTimeException e) {
                refuse(box, "A day such as 2026-07-02 belongs here.", "Type year, month and day, or leave it empty.");
                return Optional.empty();
            }
        });
    }

    /** One of an enumeration's words, in lower case. */
    <E extends Enum<E>> E choice(String box, Class<E> kind, E whenEmpty) {
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
    <E extends Enum<E>> Set<E> choices(String box, Class<E> kind) {
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

    boolean isYes(String box) {
        return text(box).filter("yes"::equals).isPresent();
    }

    /** The word of a choice in a form and in JSON. */
    static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT);
    }

    private static String words(Class<? extends Enum<?>> kind) {
        return String.join(", ", List.of(kind.getEnumConstants()).stream().map(Boxes::word).toList());
    }
}
