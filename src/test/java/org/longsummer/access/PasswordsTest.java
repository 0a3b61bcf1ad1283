package org.longsummer.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How passwords and other secrets are made, kept and judged. */
class PasswordsTest {
    private static final long MEBIBYTE = 1 << 20;

    private final Passwords passwords = new Passwords();

    @Test
    void aPasswordIsKeptAsArgon2idWithASaltOfItsOwn() {
        String kept = passwords.hash("pebble lantern oatmeal drift");
        assertTrue(kept.startsWith("$argon2id$v=19$m=19456,t=2,p=1$"), kept);
        assertNotEquals(kept, passwords.hash("pebble lantern oatmeal drift"));
        assertTrue(passwords.matches("pebble lantern oatmeal drift", Optional.of(kept)));
        assertFalse(passwords.matches("pebble lantern oatmeal drifT", Optional.of(kept)));
        assertFalse(passwords.isOutdated(kept));
    }

    @Test
    void olderParametersAreStillUnderstood() {
        String older = com.password4j.Password.hash("pebble lantern oatmeal drift").addRandomSalt(16)
                .with(com.password4j.Argon2Function.getInstance(8 * 1024, 1, 1, 32, com.password4j.types.Argon2.ID)).getResult();
        assertTrue(passwords.matches("pebble lantern oatmeal drift", Optional.of(older)));
        assertTrue(passwords.isOutdated(older));
    }

    /** The memory that a check fills is the work that it does; it is the same where nothing is kept, and the answer is no. */
    @Test
    void whereNothingIsKeptTheSameWorkIsDone() {
        Optional<String> kept = Optional.of(passwords.hash("pebble lantern oatmeal drift"));
        passwords.matches("warm up", Optional.empty());
        long known = filled(() -> assertFalse(passwords.matches("some other password", kept)));
        long unknown = filled(() -> assertFalse(passwords.matches("some other password", Optional.empty())));
        assertTrue(known > 19 * MEBIBYTE, "the check must be seen to fill its 19 MiB: " + known);
        assertEquals(known, unknown, 0.1 * known);
    }

    private static long filled(Runnable work) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        work.run();
        return threads.getCurrentThreadAllocatedBytes() - before;
    }

    @ParameterizedTest
    @ValueSource(strings = {"short", "elevenchars", "123456789012", "password1234", "passwordpassword", "qwertyuiop[]", "aaaaaaaaaaaaaa", "abcabcabcabc",
        "Longsummer2026", "longsummer-admin", "administrator", "Ines Calder 1", "inescalder2026", "FerrowFlats2026", "summertechnician", "1q2w3e4r5t6y"})
    void whatIsTriedFirstIsRefused(String password) {
        assertTrue(PasswordRules.objection(password, List.of("Ines Calder", "Ferrow Flats")).isPresent());
    }

    @ParameterizedTest
    @ValueSource(strings = {"pebble lantern oatmeal drift", "kelp!mortar_Vane", "夏の雨は静かに降って長い夜", "thimble orchard ferry", "vqx tbnw hkzr", "Grüße an die Möwe"})
    void anyCharactersInAnyMixtureWillDo(String password) {
        assertEquals(Optional.empty(), PasswordRules.objection(password, List.of("Ines Calder", "Ferrow Flats")));
    }

    @Test
    void lengthIsCountedInCharactersAndLongOnesWillDo() {
        assertTrue(PasswordRules.objection("🦤🐏🧵", List.of()).isPresent());
        String sixtyFour = "brisk ".repeat(1) + "otter candle mosaic velvet anchor ripple saffron gadget plume x";
        assertTrue(sixtyFour.length() >= 64);
        assertEquals(Optional.empty(), PasswordRules.objection(sixtyFour, List.of()));
        assertTrue(PasswordRules.objection("x".repeat(257), List.of()).isPresent());
        assertEquals(Optional.empty(), PasswordRules.objection("otter candle mosaic velvet ".repeat(9), List.of()), "256 at most");
    }

    @Test
    void aSecretHas256BitsAndPrintsNowhere() {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < 1000; i++) {
            seen.add(Secret.make().text());
        }
        assertEquals(1000, seen.size());
        Secret secret = Secret.make(Secret.OF_PROGRAM);
        assertEquals("lsp_".length() + 43, secret.text().length());
        assertFalse(secret.toString().contains(secret.text()) || List.of(secret).toString().contains(secret.text()));
        assertEquals(secret.hash(), new Secret(secret.text()).hash());
        assertEquals("ungWv48Bz-pBQUDeXa4iI7ADYaOWF3qctBD_YfIAFa0", new Secret("abc").hash(), "SHA-256 of abc, FIPS 180-4 example, in base64url");
    }
}
