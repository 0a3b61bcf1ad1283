package org.longsummer.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;

/** A clock that a test turns. */
final class TurningClock extends Clock {
    private final AtomicReference<Instant> now;

    TurningClock(String now) {
        this.now = new AtomicReference<>(Instant.parse(now));
    }

    void turn(Duration by) {
        now.updateAndGet(instant -> instant.plus(by));
    }

    @Override
    public Instant instant() {
        return now.get();
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }
}
