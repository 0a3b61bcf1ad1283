package org.longsummer.access;

import com.nulabinc.zxcvbn.Strength;
import com.nulabinc.zxcvbn.Zxcvbn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a password must be: long, and not among those that are tried first. Any characters, in any mixture, and no expiry (NIST
 * SP 800-63B, OWASP ASVS 5.0 V6.2).
 *
 * <p>Which are tried first is judged by the zxcvbn estimate: 30,000 common passwords, common words and names, rows of keys, dates and
 * repeats, and the words of this place, whole or put together. Refused is what 10^8 guesses would find.
 */
public final class PasswordRules {
    public static final int SHORTEST = 12;
    /** Longer ones are no safer and only cost time to keep. */
    public static final int LONGEST = 256;
    private static final int LEAST_SCORE = 3;
    /** The estimate's cost grows with the square of the length or worse; a longer beginning tells nothing more. */
    private static final int ESTIMATED = 64;
    /** Words of this place: what everybody who attacks it would try. */
    private static final List<String> HOUSE_WORDS = List.of("longsummer", "long summer", "summer", "rooftop", "roof", "aircon", "air conditioner",
            "camper", "caravan", "motorhome", "coach", "depot", "fleet", "rental", "technician", "manager", "administrator", "admin", "password");

    /** Its word lists are read when the first password is chosen, not at every start. */
    private static final class Estimate {
        private static final Zxcvbn ZXCVBN = new Zxcvbn();
    }

    private PasswordRules() {}

    /**
     * What is wrong with a password.
     *
     * @param limit what is asked for, as a sentence
     * @param remedy what to do, as a sentence
     */
    public record Objection(String limit, String remedy) {}

    /**
     * The first thing wrong with it; empty when it will do.
     *
     * @param ownWords the person's name, the depots' names and the like, which an attacker knows too
     */
    public static Optional<Objection> objection(String password, List<String> ownWords) {
        int length = password.codePointCount(0, password.length());
        if (length < SHORTEST || length > LONGEST) {
            return Optional.of(new Objection("A password has " + SHORTEST + " to " + LONGEST + " characters; this one has " + length + ".",
                    "Three or four words that do not belong together are long and easy to keep."));
        }
        return isTriedFirst(password, ownWords) ? Optional.of(new Objection("This password is among those that are tried first.",
                "Put words together that nobody else would; names, dates, rows of keys and repeats count for little.")) : Optional.empty();
    }

    private static boolean isTriedFirst(String password, List<String> ownWords) {
        List<String> words = new ArrayList<>(HOUSE_WORDS);
        ownWords.forEach(own -> Stream.concat(Stream.of(own), Stream.of(own.split("[^\\p{L}\\p{N}]+"))).filter(word -> word.length() > 2)
                .forEach(words::add));
        Strength strength = Estimate.ZXCVBN.measure(password.substring(0, Math.min(password.length(), ESTIMATED)), words);
        return strength.getScore() < LEAST_SCORE;
    }
}
