package org.longsummer.web;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.time.Month;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longsummer.access.Reach;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Wording;
import org.longsummer.store.Depot;
import org.longsummer.store.Standing;
import org.longsummer.store.Store;
import org.longsummer.store.YardCounts;
import org.longsummer.store.YardFilter;
import org.longsummer.store.YardOrder;
import org.longsummer.wire.Boxes;
import org.longsummer.wire.Problem;

/** The yard: the list of units, and the sentences above it that are also its filters. */
final class YardApi {
    private static final int ROWS = 50;
    private static final String NEVER_JUDGED = "never_judged";
    private static final Month SEASON_START = Month.MARCH;

    private final Store store;
    private final Clock clock;

    YardApi(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /**
     * One page of the yard.
     *
     * @param unitsInFleet all units; 0 on a first start
     * @param found units that the filter lets through
     * @param page this page's number, from 1
     * @param pages how many there are
     * @param unvisitedSince the day that "not visited since" counts from
     * @param sentences numbers that are filters
     * @param depots names of all depots
     * @param conditions words and phrases to filter by
     * @param rows most pressing first, unless another order was asked for
     */
    record YardView(int unitsInFleet, int found, int page, int pages, String unvisitedSince, List<Sentence> sentences,
            List<String> depots, List<Choice> conditions, List<Row> rows) {}

    /** A number of units and the filter that lists them. */
    record Sentence(String key, int count, Map<String, String> filter) {}

    /** A word of the files and its phrase on a screen. */
    record Choice(String word, String phrase) {}

    /** A unit in the yard. {@code state} is that of its last judged visit, or {@code never_judged}. */
    record Row(String unitId, String label, String depot, String vehicle, String roofPosition, boolean inService, String state,
            boolean toRetake, String likely, String impact, Optional<String> since, Optional<String> lastVisitAt, int visitCount) {}

    void show(Context request) {
        Reader.system(request);
        LocalDate since = Reader.text(request, "since").map(this::day).orElseGet(this::seasonStart);
        YardFilter place = place(request);
        YardFilter filter = narrowed(place, request, since);
        int page = Reader.page(request);
        int found = store.standings().count(filter);
        Reach reach = Asking.of(request).reach();
        List<Depot> depots = store.depots().all(reach);
        request.json(new YardView(store.units().count(reach), found, page, Math.max(1, (found + ROWS - 1) / ROWS), since.toString(),
                sentences(place, since), depots.stream().map(Depot::name).toList(), conditions(),
                rows(store.standings().page(filter, order(request), (page - 1) * ROWS, ROWS), depots)));
    }

    private YardFilter place(Context request) {
        YardFilter filter = Asking.of(request).yard();
        Optional<String> depot = Reader.text(request, "depot");
        Optional<String> text = Reader.text(request, "text");
        filter = depot.isPresent() ? filter.inDepot(depot.get()) : filter;
        return text.isPresent() ? filter.containing(text.get()) : filter;
    }

    private YardFilter narrowed(YardFilter place, Context request, LocalDate since) {
        YardFilter filter = place;
        Optional<String> state = Reader.text(request, "state");
        Optional<String> condition = Reader.text(request, "condition");
        if (state.isPresent()) {
            filter = state.get().equals(NEVER_JUDGED) ? filter.onlyNeverJudged() : filter.inState(state(state.get()));
        }
        if (condition.isPresent()) {
            filter = filter.withCondition(condition(condition.get()));
        }
        return "unvisited".equals(request.queryParam("seen"))
                ? filter.notVisitedSince(since.atStartOfDay().toInstant(ZoneOffset.UTC)) : filter;
    }

    private List<Sentence> sentences(YardFilter place, LocalDate since) {
        YardCounts counts = store.standings().counts(place, since.atStartOfDay().toInstant(ZoneOffset.UTC));
        return List.of(new Sentence("act", counts.act(), Map.of("state", "act")),
                new Sentence("drifting", counts.drifting(), Map.of("state", "drifting")),
                new Sentence("steady", counts.steady(), Map.of("state", "steady")),
                new Sentence(NEVER_JUDGED, counts.neverJudged(), Map.of("state", NEVER_JUDGED)),
                new Sentence("retake", counts.toRetake(), Map.of("state", "retake")),
                new Sentence("unvisited", counts.notVisited(), Map.of("seen", "unvisited")),
                new Sentence("all", counts.units(), Map.of()));
    }

    private static List<Row> rows(List<Standing> standings, List<Depot> depots) {
        Map<String, Optional<ZoneId>> zones = depots.stream().collect(Collectors.toMap(Depot::name, Depot::timeZone));
        List<Row> rows = new ArrayList<>();
        for (Standing standing : standings) {
            Optional<ZoneId> zone = zones.getOrDefault(standing.depot(), Optional.empty());
            rows.add(new Row(standing.unitId(), standing.label(), standing.depot(), standing.vehicle(), standing.roofPosition(),
                    standing.inService(), standing.judged().map(judged -> judged.state().word()).orElse(NEVER_JUDGED),
                    standing.lastToRetake(), standing.judged().map(YardApi::likely).orElse(""),
                    standing.judged().map(judged -> Wording.probability(judged.probabilityOfImpact())).orElse(""),
                    standing.judged().filter(YardApi::isFault).flatMap(judged -> judged.since()).map(LocalDate::toString),
                    standing.lastVisitAt().map(at -> VisitRow.moment(at, zone)), standing.visitCount()));
        }
        return rows;
    }

    private static boolean isFault(Standing.Judged judged) {
        return judged.state() == State.ACT || judged.state() == State.DRIFTING;
    }

    private static String likely(Standing.Judged judged) {
        if (!isFault(judged)) {
            return "";
        }
        if (judged.condition() == Condition.NOT_COOLING) {
            return judged.condition().phrase();
        }
        return judged.condition().phrase() + ": " + Wording.probability(judged.probabilityOfLikeliestFault());
    }

    private static List<Choice> conditions() {
        List<Choice> choices = new ArrayList<>();
        for (Condition condition : Condition.values()) {
            if (condition != Condition.NONE) {
                choices.add(new Choice(condition.word(), condition.phrase()));
            }
        }
        return choices;
    }

    private static YardOrder order(Context request) {
        return switch (Reader.text(request, "order").orElse("pressing")) {
            case "pressing" -> YardOrder.MOST_PRESSING;
            case "label" -> YardOrder.LABEL;
            case "unvisited" -> YardOrder.LONGEST_UNVISITED;
            default -> throw new Refused(400, List.of(new Problem("order", request.queryParam("order"),
                    "One of pressing, label, unvisited.", "Leave it out for the most pressing first.")));
        };
    }

    private static State state(String given) {
        for (State state : State.values()) {
            if (state.word().equals(given)) {
                return state;
            }
        }
        throw new Refused(400, List.of(new Problem("state", given, "One of act, drifting, steady, retake, never_judged.",
                "Leave it out for all.")));
    }

    private static Condition condition(String given) {
        for (Condition condition : Condition.values()) {
            if (condition.word().equals(given)) {
                return condition;
            }
        }
        throw new Refused(400, List.of(new Problem("condition", given, "A condition's word, such as condenser_fouling.",
                "Leave it out for all.")));
    }

    private LocalDate day(String given) {
        Boxes boxes = new Boxes(Map.of("since", given));
        Optional<LocalDate> day = boxes.day("since");
        Refused.ifAny(boxes.problems());
        return day.orElseGet(this::seasonStart);
    }

    /** The last first of March: where nobody says otherwise, a cooling season's preparation begins then. */
    private LocalDate seasonStart() {
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        LocalDate thisYear = LocalDate.of(today.getYear(), SEASON_START, 1);
        return thisYear.isAfter(today) ? thisYear.minusYears(1) : thisYear;
    }
}
