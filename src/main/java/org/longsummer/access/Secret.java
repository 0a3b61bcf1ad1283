package org.longsummer.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;

/**
 * Something that only its holder knows: the key of a session, a phone, a program or a link. 256 random bits, so that a plain hash is
 * enough to keep it by; the text itself is handed out once and stored nowhere.
 *
 * @param text letters, digits, {@code -} and {@code _}
 */
public record Secret(String text) {
    /** What a program's secret begins with, so that one that was leaked is recognised. */
    public static final String OF_PROGRAM = "lsp_";
    private static final int BYTES = 32;
    private static final SecureRandom RANDOM = new SecureRandom();

    public static Secret make() {
        return make("");
    }

    public static Secret make(String beginning) {
        return new Secret(beginning + text(BYTES));
    }

    /** An id that says nothing and cannot be guessed, for what is listed and addressed but opens nothing. */
    public static String id(String beginning) {
        return beginning + text(12);
    }

    private static String text(int length) {
        byte[] bytes = new byte[length];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** What is kept of it: SHA-256 of its text. */
    public String hash() {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Never its text: a secret that is printed is one no longer. */
    @Override
    public String toString() {
        return "Secret";
    }
}
