package org.longsummer.web;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.condition.Wording;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.RecordedVisit;
import org.longsummer.wire.Boxes;
import org.longsummer.wire.JudgedView;
import org.longsummer.wire.JudgedView.DepartureView;

/**
 * One row of a unit's record, as its table and its chart need it.
 *
 * @param id the visit
 * @param at its moment on the place's clock, with its offset from UTC
 * @param technician who read
 * @param counts neither corrected nor withdrawn
 * @param marking why it no longer counts, or what it corrects
 * @param state what it was judged; absent when it does not count
 * @param condition likely condition in words; empty when there is none
 * @param split against expectation; its budget left out
 * @param amps against expectation; its budget left out
 * @param splitBand what the whole history up to this visit makes of the split against a sound unit's, ± two standard uncertainties
 * @param ampsBand the same of the amps
 * @param work words of the work done
 */
record VisitRow(String id, String at, String technician, boolean counts, Optional<Marking> marking, Optional<String> state,
        String condition, Optional<JudgedView> split, Optional<JudgedView> amps, Optional<DepartureView> splitBand,
        Optional<DepartureView> ampsBand, List<String> work) {

    /**
     * Why a row no longer counts, or why it took another's place.
     *
     * @param kind {@code corrected}, {@code withdrawn} or {@code correction}
     * @param by who
     * @param at when the store was told
     * @param reason why
     * @param otherId the visit that took its place, or whose place it took; empty for a withdrawal
     */
    record Marking(String kind, String by, String at, String reason, String otherId) {}

    static VisitRow of(RecordedVisit row, Optional<Verdict> verdict, Optional<Marking> marking, UnitSystem system) {
        Visit visit = row.visit();
        return new VisitRow(visit.id(), moment(visit.at(), visit.offset()), visit.technician(), row.counts(), marking,
                verdict.map(v -> v.state().word()), verdict.map(v -> Wording.phrase(v.condition(), v)).orElse(""),
                verdict.map(v -> brief(JudgedView.split(v.departure(), system))),
                verdict.map(v -> brief(JudgedView.amps(v.departure(), system))),
                verdict.map(v -> DepartureView.of(v.splitEffect())), verdict.map(v -> DepartureView.of(v.ampsEffect())),
                visit.workDone().stream().sorted().map(Boxes::word).toList());
    }

    private static JudgedView brief(JudgedView view) {
        return new JudgedView(view.measured(), view.expected(), view.expanded(), view.departure(), List.of(), view.text());
    }

    static String moment(Instant at, ZoneOffset offset) {
        return at.atOffset(offset).withNano(0).toString();
    }

    /** On the clock of a place, or in UTC where its time zone is not known. */
    static String moment(Instant at, Optional<ZoneId> zone) {
        OffsetDateTime local = OffsetDateTime.ofInstant(at, zone.orElse(ZoneOffset.UTC));
        return local.withNano(0).toString();
    }
}
