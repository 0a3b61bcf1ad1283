package org.longsummer.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longsummer.access.Person;
import org.longsummer.access.Reach;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.Rounds;
import org.longsummer.store.Standing;
import org.longsummer.store.Store;
import org.longsummer.store.VisitRound;
import org.longsummer.wire.Boxes;
import org.longsummer.wire.Problem;

/** The round: units to visit on a day, in walking order, to print and to type in later. */
final class RoundApi {
    private static final int LATEST = 30;
    private static final int LONGEST_TITLE = 120;
    private static final int LONGEST_PLACE = 40;

    private final Store store;

    RoundApi(Store store) {
        this.store = store;
    }

    /** A new round; sent twice under one id it is made once. */
    record Form(String id, YardChoice.Form choice, Map<String, String> boxes) {}

    record Made(String roundId) {}

    /** A round in a list. */
    record BriefView(String roundId, String title, String forDay, String madeBy, int stops, int visited) {}

    record ListView(List<BriefView> rounds) {}

    /** A round with its stops. */
    record RoundView(String roundId, String title, String forDay, String madeBy, String madeAt, List<RoundStops.StopView> stops) {}

    /** Where units stand. */
    record StandsForm(List<StandForm> stands) {}

    record StandForm(String unitId, String row, String place) {}

    void list(Context request) {
        request.json(new ListView(store.rounds().latest(Asking.of(request).reach(), LATEST).stream().map(brief -> new BriefView(brief.round().id(),
                brief.round().title(), brief.round().forDay().toString(), brief.round().madeBy(), brief.stops(), brief.visited())).toList()));
    }

    void make(Context request) {
        Form form = Reader.body(request, Form.class);
        Boxes boxes = new Boxes(form.boxes() == null ? Map.of() : form.boxes());
        String id = id(form.id(), boxes);
        Optional<LocalDate> day = boxes.day("day");
        VisitRound round = new VisitRound(id, boxes.text("title", LONGEST_TITLE), day.orElseGet(this::today), by(request, boxes),
                store.clock().instant());
        Refused.ifAny(boxes.problems());
        YardChoice choice = YardChoice.of(form.choice() == null ? new YardChoice.Form(List.of(), null, null) : form.choice(),
                Asking.of(request), store, today());
        int chosen = choice.count();
        if (chosen == 0 || chosen > Rounds.MOST_STOPS) {
            throw new Refused(422, List.of(new Problem("units", String.valueOf(chosen), "A round has 1 to " + Rounds.MOST_STOPS + " units.",
                    chosen == 0 ? "Choose units that are there." : "Choose fewer: a depot, or the most pressing.")));
        }
        List<Standing> units = new ArrayList<>();
        choice.forEach(units::add);
        if (units.isEmpty()) {
            throw new Refused(422, List.of(new Problem("units", "", "None of these units is there.", "Choose units in the yard.")));
        }
        store.rounds().make(round, units);
        request.status(201).json(new Made(id));
    }

    void show(Context request) {
        UnitSystem system = Reader.system(request);
        Reach reach = Asking.of(request).reach();
        VisitRound round = find(request, reach);
        request.json(new RoundView(round.id(), round.title(), round.forDay().toString(), round.madeBy(), round.madeAt().toString(),
                new RoundStops(store, system, reach).of(round)));
    }

    /** Says where its units stand; answers the round in its new order. */
    void stand(Context request) {
        Reach reach = Asking.of(request).reach();
        VisitRound round = find(request, reach);
        StandsForm form = Reader.body(request, StandsForm.class);
        Map<String, VisitRound.Stop> stops = store.rounds().stops(round.id(), reach).stream()
                .collect(Collectors.toMap(VisitRound.Stop::unitId, stop -> stop));
        Map<String, Rounds.Place> stands = new HashMap<>();
        for (StandForm stand : form.stands() == null ? List.<StandForm>of() : form.stands()) {
            if (stops.containsKey(stand.unitId())) {
                Boxes boxes = new Boxes(Map.of("row", text(stand.row()), "place", text(stand.place())));
                stands.put(stand.unitId(), new Rounds.Place(boxes.text("row", LONGEST_PLACE), boxes.text("place", LONGEST_PLACE)));
                Refused.ifAny(boxes.problems());
            }
        }
        store.rounds().stand(round.id(), stands);
        show(request);
    }

    private VisitRound find(Context request, Reach reach) {
        String id = request.pathParam("round");
        return store.rounds().find(id, reach).orElseThrow(() -> Refused.unknown("round", id, "There is no round of this id."));
    }

    private static String text(String given) {
        return given == null ? "" : given;
    }

    private LocalDate today() {
        return LocalDate.ofInstant(store.clock().instant(), ZoneOffset.UTC);
    }

    /** An id made by whoever sends, short enough that more can be put behind it. */
    static String id(String given, Boxes boxes) {
        String id = text(given);
        if (!id.matches("[A-Za-z0-9_-]{1,40}")) {
            boxes.refuse("id", "An id of at most 40 letters and digits belongs here, made by whoever sends.", "Make one, and send again with the same if no answer comes.");
        }
        return id;
    }

    /** Whoever is signed in, else who is named. */
    static String by(Context request, Boxes boxes) {
        return Asking.of(request).person().map(Person::name).orElseGet(() -> boxes.text("by", Person.LONGEST_NAME));
    }
}
