package org.longsummer.access;

import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;
import java.util.Optional;
import java.util.concurrent.Semaphore;

/**
 * Keeps passwords as Argon2id hashes (RFC 9106) that carry their own parameters, so that these can be raised later.
 *
 * <p>19 MiB, two passes, one lane: the least that the OWASP Password Storage Cheat Sheet advises, and as much as a small server with a
 * small heap can give. Two are computed at a time, the others wait their turn, so that many who sign in at once do not use up memory.
 */
public final class Passwords {
    private static final int MEMORY_KIB = 19 * 1024;
    private static final int PASSES = 2;
    private static final int LANES = 1;
    private static final int HASH_BYTES = 32;
    private static final int SALT_BYTES = 16;
    private static final int AT_ONCE = 2;

    private final Argon2Function function = Argon2Function.getInstance(MEMORY_KIB, PASSES, LANES, HASH_BYTES, Argon2.ID);
    private final Semaphore turns = new Semaphore(AT_ONCE, true);
    private String nobodys;

    /** What is kept of a password. */
    public String hash(String password) {
        turns.acquireUninterruptibly();
        try {
            return Password.hash(password).addRandomSalt(SALT_BYTES).with(function).getResult();
        } finally {
            turns.release();
        }
    }

    /**
     * Whether this is the password that was kept. Where nothing was kept, the same work is done before the answer is no, so that the
     * time taken does not tell who has an account.
     */
    public boolean matches(String given, Optional<String> kept) {
        String nobody = nobodys();
        String hash = kept.orElse(nobody);
        turns.acquireUninterruptibly();
        try {
            return Password.check(given, hash).with(Argon2Function.getInstanceFromHash(hash)) && kept.isPresent();
        } finally {
            turns.release();
        }
    }

    /** A hash whose password nobody knows; made at the first question, whoever asks. */
    private synchronized String nobodys() {
        if (nobodys == null) {
            nobodys = hash(Secret.make().text());
        }
        return nobodys;
    }

    /** It was kept with other parameters than are used now and should be kept anew, now that it is known. */
    public boolean isOutdated(String kept) {
        return !Argon2Function.getInstanceFromHash(kept).equals(function);
    }
}
