package org.longsummer.wire;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** The members of a JSON object, read by name; one that is missing or null is absent. */
public record Fields(Map<String, Object> members) {

    @SuppressWarnings("unchecked")
    static Fields of(Object value) {
        if (!(value instanceof Map)) {
            throw new IllegalArgumentException("a JSON object was expected");
        }
        return new Fields((Map<String, Object>) value);
    }

    /** Text; empty when absent. */
    public String text(String name) {
        return members.get(name) instanceof String text ? text : "";
    }

    public Optional<String> optionalText(String name) {
        return members.get(name) instanceof String text ? Optional.of(text) : Optional.empty();
    }

    public Optional<Double> optionalNumber(String name) {
        return members.get(name) instanceof Double number ? Optional.of(number) : Optional.empty();
    }

    /**
     * A number that must be there.
     *
     * @throws IllegalArgumentException when it is not
     */
    public double number(String name) {
        return optionalNumber(name).orElseThrow(() -> new IllegalArgumentException("the number " + name + " is missing"));
    }

    /** A quantity, when its number is there. */
    public <T> Optional<T> quantity(String name, DoubleFunction<T> make) {
        return optionalNumber(name).map(make::apply);
    }

    public boolean isTrue(String name) {
        return Boolean.TRUE.equals(members.get(name));
    }

    public Optional<LocalDate> day(String name) {
        return optionalText(name).map(Boxes::dayOf);
    }

    /** An enumeration's word in lower case; what is absent stands for one of them. */
    public <E extends Enum<E>> E choice(String name, E[] choices, E whenAbsent) {
        String word = text(name);
        for (E choice : choices) {
            if (choice.name().toLowerCase(Locale.ROOT).equals(word)) {
                return choice;
            }
        }
        return whenAbsent;
    }

    /** The items of an array; none when absent. */
    @SuppressWarnings("unchecked")
    public List<Object> items(String name) {
        return members.get(name) instanceof List ? (List<Object>) members.get(name) : List.of();
    }

    /** The objects of an array. */
    public List<Fields> objects(String name) {
        return items(name).stream().map(Fields::of).toList();
    }

    /** An object's members; none when absent. */
    public Fields object(String name) {
        return members.get(name) instanceof Map ? of(members.get(name)) : new Fields(Map.of());
    }

    /** The members that are texts. */
    public Map<String, String> texts() {
        Map<String, String> texts = new LinkedHashMap<>();
        members.forEach((name, value) -> {
            if (value instanceof String text) {
                texts.put(name, text);
            }
        });
        return texts;
    }
}
