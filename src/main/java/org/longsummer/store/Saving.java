package org.longsummer.store;

import org.longsummer.chain.condition.Verdict;

/** What became of a visit that was handed over. */
public sealed interface Saving {

    /** It is on disk and judged. */
    record Stored(Verdict verdict) implements Saving {}

    /** The same visit with the same content was there before; nothing was changed. */
    record AlreadyStored(RecordedVisit stored) implements Saving {}

    /** Another content is stored under the same id; nothing was changed. */
    record IdTaken(RecordedVisit stored) implements Saving {}

    /** The unit is not known; nothing was changed. */
    record UnknownUnit(String unitId) implements Saving {}

    /** The visit to be corrected is not known or belongs to another unit; nothing was changed. */
    record UnknownVisit(String visitId) implements Saving {}

    /** The visit to be corrected no longer counts: it was corrected or withdrawn meanwhile; nothing was changed. */
    record NoLongerCounts(RecordedVisit stored) implements Saving {}
}
