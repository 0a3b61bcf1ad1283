package org.longsummer.wire;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;

/** The clock on the wall of a place whose time zone is known. */
public interface PlaceClock {
    /** Its offset from UTC at a moment. */
    ZoneOffset offset(Instant moment);

    /** Its offset from UTC when it shows this. */
    ZoneOffset offset(LocalDateTime shown);
}
