package org.longsummer.phone;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.TreeSet;

/** Compares answers as JSON: words, order and shape are the same, and every number within a billionth of itself. */
final class SameAnswers {
    static final double TOLERANCE = 1e-9;
    /** Below this a number is a sum of terms that cancel, such as the departure of a reading that is as expected to the last digit. */
    private static final double NOTHING = 1e-9;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final List<String> differences = new ArrayList<>();
    private long numbers;
    private long words;
    private double worst;

    void compare(String where, String one, String other) {
        try {
            compare(where, JSON.readTree(one), JSON.readTree(other));
        } catch (JsonProcessingException e) {
            differences.add(where + ": " + e.getMessage());
        }
    }

    private void compare(String where, JsonNode one, JsonNode other) {
        if (one.isNumber() && other.isNumber()) {
            compare(where, one.asDouble(), other.asDouble());
        } else if (one.isObject() && other.isObject()) {
            TreeSet<String> names = new TreeSet<>();
            one.fieldNames().forEachRemaining(names::add);
            other.fieldNames().forEachRemaining(names::add);
            names.forEach(name -> compare(where + "/" + name, one.path(name), other.path(name)));
        } else if (one.isArray() && other.isArray() && one.size() == other.size()) {
            Iterator<JsonNode> others = other.iterator();
            int index = 0;
            for (JsonNode item : one) {
                compare(where + "/" + index++, item, others.next());
            }
        } else {
            words++;
            if (!one.equals(other)) {
                differences.add(where + ": " + one + " and " + other);
            }
        }
    }

    private void compare(String where, double one, double other) {
        numbers++;
        double larger = Math.max(Math.abs(one), Math.abs(other));
        double apart = larger < NOTHING ? 0 : Math.abs(one - other) / larger;
        worst = Math.max(worst, apart);
        if (!(apart <= TOLERANCE)) {
            differences.add(where + ": " + one + " and " + other);
        }
    }

    List<String> differences() {
        return differences;
    }

    String summary() {
        return words + " words the same, " + numbers + " numbers, the worst " + worst + " apart";
    }
}
