package org.longsummer.web;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneRules;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.access.Person;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.Correction;
import org.longsummer.store.Entry;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Judging.Withdrawing;
import org.longsummer.store.RecordedVisit;
import org.longsummer.store.Saving;
import org.longsummer.store.Store;
import org.longsummer.store.Typed;
import org.longsummer.wire.Boxes;
import org.longsummer.wire.PlaceClock;
import org.longsummer.wire.Problem;
import org.longsummer.wire.VerdictView;
import org.longsummer.wire.VisitForm;

/** One visit: judged while it is typed, saved, shown with its reasons, corrected, withdrawn. */
final class VisitApi {
    private static final int LONGEST_ID = 64;

    private final Store store;
    private final Clock clock;

    VisitApi(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /**
     * A visit's form.
     *
     * @param id made by whoever sends it, so that sending twice stores once
     * @param boxes texts by the names of the boxes
     */
    record Form(String id, Map<String, String> boxes) {}

    /** What a draft says; problems do not stop it. */
    record DraftView(Optional<VerdictView> verdict, List<Problem> problems) {}

    /** A saved visit and what it says. */
    record SavedView(String visitId, String unitId, boolean storedBefore, Optional<VerdictView> verdict) {}

    /** A stored visit with what it says; the verdict is absent when it no longer counts. */
    record VisitPage(UnitView unit, VisitView visit, Optional<VerdictView> verdict) {}

    /** What the page needs before anything is typed: the unit, and the last visit that counts. */
    record BlankPage(UnitView unit, Optional<String> timeZone, Optional<VisitView> last, Optional<String> lastAt) {}

    /** Who withdraws a visit and why. */
    record WithdrawalForm(String by, String reason) {}

    record Withdrawn(String visitId) {}

    void blank(Context request) {
        UnitSystem system = Reader.system(request);
        FleetUnit unit = UnitApi.find(store, request.pathParam("unit"));
        Optional<RecordedVisit> last = store.standings().ofUnit(unit.id()).flatMap(standing -> standing.lastVisitId())
                .flatMap(store.visits()::find);
        request.json(new BlankPage(UnitView.of(unit, system), zone(unit).map(ZoneId::getId), last.map(row -> VisitView.of(row, system)),
                last.map(row -> VisitRow.moment(row.visit().at(), row.visit().offset()))));
    }

    void judge(Context request) {
        UnitSystem system = Reader.system(request);
        FleetUnit unit = UnitApi.find(store, request.pathParam("unit"));
        Form form = Reader.body(request, Form.class);
        VisitForm boxes = new VisitForm(form.boxes(), clock.instant());
        Visit draft = boxes.visit(form.id() == null ? "draft" : form.id(), unit.id(), clockAt(unit), store.technicians()::instrumentsOf);
        Optional<Verdict> verdict = store.judging().preview(draft);
        request.json(new DraftView(verdict.map(v -> VerdictView.of(v, system)), boxes.problems()));
    }

    void save(Context request) {
        FleetUnit unit = UnitApi.find(store, request.pathParam("unit"));
        save(request, unit, Optional.empty());
    }

    void correct(Context request) {
        RecordedVisit earlier = find(request.pathParam("visit"));
        refuseUnlessOwn(request, earlier);
        save(request, UnitApi.find(store, earlier.visit().unitId()), Optional.of(earlier.visit().id()));
    }

    void show(Context request) {
        UnitSystem system = Reader.system(request);
        RecordedVisit row = find(request.pathParam("visit"));
        FleetUnit unit = UnitApi.find(store, row.visit().unitId());
        Optional<Verdict> verdict = store.judging().verdict(unit.id(), row.visit().id());
        request.json(new VisitPage(UnitView.of(unit, system), VisitView.of(row, system), verdict.map(v -> VerdictView.of(v, system))));
    }

    void withdraw(Context request) {
        String visitId = request.pathParam("visit");
        store.visits().find(visitId).ifPresent(stored -> refuseUnlessOwn(request, stored));
        WithdrawalForm form = Reader.body(request, WithdrawalForm.class);
        Boxes boxes = new Boxes(Map.of("by", signedBy(request, form.by() == null ? "" : form.by()), "reason", form.reason() == null ? "" : form.reason()));
        String by = boxes.text("by", 80);
        String reason = boxes.text("reason", 4000);
        if (by.isEmpty()) {
            boxes.refuse("by", "A withdrawal needs a name.", "Say who you are.");
        }
        if (reason.isEmpty()) {
            boxes.refuse("reason", "A withdrawal needs its reason.", "Say in a few words what is wrong with the visit.");
        }
        Refused.ifAny(boxes.problems());
        Withdrawing outcome = store.judging().withdraw(visitId, by, reason);
        if (outcome == Withdrawing.UNKNOWN_VISIT) {
            throw unknown(visitId);
        }
        if (outcome == Withdrawing.NO_LONGER_COUNTED) {
            throw noLongerCounts(visitId);
        }
        request.json(new Withdrawn(visitId));
    }

    private void save(Context request, FleetUnit unit, Optional<String> corrects) {
        UnitSystem system = Reader.system(request);
        Form form = Reader.body(request, Form.class);
        String id = form.id() == null ? "" : form.id();
        if (!id.matches("[A-Za-z0-9_-]{1," + LONGEST_ID + "}")) {
            throw new Refused(422, List.of(new Problem("id", id, "A visit needs an id of letters and digits, made by whoever sends it.",
                    "Make one and send it again with the same id if the answer does not arrive.")));
        }
        Entry entry = entry(new VisitForm(form.boxes(), clock.instant()), id, unit, corrects);
        Saving outcome = store.judging().save(entry.savedBy(signedBy(request, entry.savedBy())));
        answer(request, unit, id, outcome, system);
    }

    private static void answer(Context request, FleetUnit unit, String id, Saving outcome, UnitSystem system) {
        if (outcome instanceof Saving.Stored stored) {
            request.status(201).json(new SavedView(id, unit.id(), false, Optional.of(VerdictView.of(stored.verdict(), system))));
        } else if (outcome instanceof Saving.AlreadyStored) {
            request.json(new SavedView(id, unit.id(), true, Optional.empty()));
        } else if (outcome instanceof Saving.NoLongerCounts counted) {
            throw noLongerCounts(counted.stored().visit().id());
        } else if (outcome instanceof Saving.IdTaken) {
            throw Refused.conflict("id", id, "Another visit is stored under this id.", "Send it with a new id.");
        } else {
            throw Refused.unknown("visit", id, "The unit or the visit to be corrected is not there.");
        }
    }

    /** Who hands a visit over: whoever is signed in; on an open server, the name that was typed. */
    private static String signedBy(Context request, String typed) {
        return Asking.of(request).person().map(Person::name).orElse(typed);
    }

    private static void refuseUnlessOwn(Context request, RecordedVisit visit) {
        if (!Asking.of(request).mayChangeWhatWasSavedBy(visit.entry().savedBy())) {
            throw new Refused(403, List.of(new Problem("", visit.entry().savedBy(), "This visit was saved by somebody else.",
                    "Ask him, or a manager, to correct or withdraw it.")));
        }
    }

    /** The visit to be saved, with what was typed; refused with all problems at once. */
    private Entry entry(VisitForm form, String id, FleetUnit unit, Optional<String> corrects) {
        form.askForWhatSavingNeeds(corrects.isPresent());
        Visit visit = form.visit(id, unit.id(), clockAt(unit), store.technicians()::instrumentsOf);
        Refused.ifAny(form.problems());
        return new Entry(visit, new Typed(form.typedIn(), form.kept()), visit.technician(),
                corrects.map(earlier -> new Correction(earlier, form.reason())));
    }

    private RecordedVisit find(String visitId) {
        return store.visits().find(visitId).orElseThrow(() -> unknown(visitId));
    }

    private Optional<ZoneId> zone(FleetUnit unit) {
        return store.depots().named(unit.unit().site()).flatMap(depot -> depot.timeZone());
    }

    private Optional<PlaceClock> clockAt(FleetUnit unit) {
        return zone(unit).map(ZoneId::getRules).map(ZoneRulesClock::new);
    }

    /** A clock by the rules of its zone. */
    private record ZoneRulesClock(ZoneRules rules) implements PlaceClock {
        @Override
        public ZoneOffset offset(Instant moment) {
            return rules.getOffset(moment);
        }

        @Override
        public ZoneOffset offset(LocalDateTime shown) {
            return rules.getOffset(shown);
        }
    }

    static Refused unknown(String visitId) {
        return Refused.unknown("visit", visitId, "There is no visit of this id.");
    }

    private static Refused noLongerCounts(String visitId) {
        return Refused.conflict("visit", visitId, "This visit was corrected or withdrawn meanwhile.",
                "Look at the unit's record and correct the row that counts.");
    }
}
