package org.longsummer.store;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;

/**
 * A browser in which somebody is signed in, or a phone that keeps a key of its own.
 *
 * @param id by which it is listed and ended; it opens nothing
 * @param personId whose it is
 * @param kind browser or phone
 * @param label what the person calls it, or what the browser calls itself
 * @param began when it was begun
 * @param used when it was last used, to within five minutes
 */
public record Session(String id, String personId, Kind kind, String label, Instant began, Instant used) {

    /** How long a session lives. */
    public enum Kind {
        /** A working day without use, a month at most. */
        BROWSER(Duration.ofHours(10), Duration.ofDays(30)),
        /** Over a winter without use, two seasons at most: on a roof without a signal nobody can sign in. */
        PHONE(Duration.ofDays(200), Duration.ofDays(400));

        private final Duration idle;
        private final Duration absolute;

        Kind(Duration idle, Duration absolute) {
            this.idle = idle;
            this.absolute = absolute;
        }

        /** Ends when it was not used for so long. */
        public Duration idle() {
            return idle;
        }

        /** Ends so long after it began, whatever its use. */
        public Duration absolute() {
            return absolute;
        }

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** It may still be used. */
    public boolean isAlive(Instant now) {
        return now.isBefore(used.plus(kind.idle())) && now.isBefore(began.plus(kind.absolute()));
    }
}
