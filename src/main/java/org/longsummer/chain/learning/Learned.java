package org.longsummer.chain.learning;

import java.util.List;

/**
 * One thing learned across units: a key such as {@code technician/T01/2020} and its numbers, in an order the key's kind defines.
 *
 * @param key kind and name
 * @param numbers estimate and variance, unit-blind
 */
public record Learned(String key, List<Double> numbers) {
    public Learned {
        numbers = List.copyOf(numbers);
    }
}
