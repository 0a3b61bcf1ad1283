package org.longsummer.store;

import java.time.Instant;
import java.util.Optional;

/**
 * A photo of a visit, without its bytes.
 *
 * @param id made by whoever sends it, so that sending twice stores once
 * @param visitId its visit; where that was corrected or given to another unit, the row that counts now
 * @param subject what it shows
 * @param contentType as its bytes say
 * @param receivedAt when the store received it
 * @param savedBy who handed it over
 * @param removal set when its bytes were taken out
 */
public record Photo(String id, String visitId, Subject subject, String contentType, Instant receivedAt, String savedBy,
        Optional<Withdrawal> removal) {

    /** What a photo shows. */
    public enum Subject { PLATE, COIL, OTHER }
}
