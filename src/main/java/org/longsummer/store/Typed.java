package org.longsummer.store;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.longsummer.quantity.UnitSystem;

/**
 * What a person or a file gave, before it became quantities.
 *
 * @param system the system the person typed in
 * @param texts the text of each box by the box's name, which ends in its unit of measure, such as {@code return_db_f}; boxes left
 *     empty are absent. Neither names nor texts span lines: line breaks become spaces
 */
public record Typed(UnitSystem system, Map<String, String> texts) {

    public Typed {
        Map<String, String> tidy = new LinkedHashMap<>();
        texts.forEach((box, text) -> {
            if (!text.isBlank()) {
                tidy.put(box, (isPlain(text) ? text : text.replaceAll("\\R", " ")).strip());
            }
        });
        texts = Collections.unmodifiableMap(tidy);
    }

    /** Numbers are: they hold no line break, and a file has millions of them. */
    private static boolean isPlain(String text) {
        return text.chars().allMatch(letter -> letter >= ' ' && letter <= '~');
    }

    /** Nothing typed: the visit came as quantities. */
    public static Typed nothing(UnitSystem system) {
        return new Typed(system, Map.of());
    }

    /** One line a box: its name, a space, its text. */
    String lines() {
        StringBuilder lines = new StringBuilder();
        texts.forEach((box, text) -> lines.append(box).append(' ').append(text).append('\n'));
        return lines.toString();
    }

    static Typed ofLines(UnitSystem system, String lines) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String line : lines.split("\n")) {
            int space = line.indexOf(' ');
            if (space > 0) {
                texts.put(line.substring(0, space), line.substring(space + 1));
            }
        }
        return new Typed(system, texts);
    }
}
