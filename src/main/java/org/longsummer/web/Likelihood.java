package org.longsummer.web;

import org.longsummer.quantity.Decimal;

/**
 * A probability in words and figures together. The words are those of the guidance note for authors of the IPCC's fifth assessment
 * (Mastrandrea et al., 2010, table 1).
 */
final class Likelihood {
    private Likelihood() {}

    /** For example {@code likely, 84 %}. */
    static String text(double probability) {
        return words(probability) + ", " + percent(probability);
    }

    static String percent(double probability) {
        if (probability > 0.99) {
            return "above 99 %";
        }
        return probability < 0.01 ? "below 1 %" : Decimal.text(100 * probability, 0) + " %";
    }

    private static String words(double probability) {
        if (probability > 0.99) {
            return "virtually certain";
        }
        if (probability > 0.90) {
            return "very likely";
        }
        if (probability > 0.66) {
            return "likely";
        }
        if (probability >= 0.33) {
            return "about as likely as not";
        }
        return probability >= 0.10 ? "unlikely" : "very unlikely";
    }
}
