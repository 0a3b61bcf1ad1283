package org.longsummer.web;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.longsummer.access.Reach;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.Depot;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.RecordedVisit;
import org.longsummer.store.Standing;
import org.longsummer.store.Store;
import org.longsummer.store.VisitRound;
import org.longsummer.wire.Boxes;
import org.longsummer.wire.Shown;
import org.longsummer.wire.VerdictView;
import org.longsummer.wire.VisitBoxes;

/** The stops of a round, each with what is to be known of its unit on site. */
final class RoundStops {
    private final Store store;
    private final UnitSystem system;
    private final Reach reach;
    private final Map<String, Depot> depots;

    RoundStops(Store store, UnitSystem system, Reach reach) {
        this.store = store;
        this.system = system;
        this.reach = reach;
        this.depots = store.depots().all(reach).stream().collect(Collectors.toMap(Depot::name, Function.identity()));
    }

    /**
     * One unit.
     *
     * @param visitId the id that its visit gets
     * @param visited whether it is stored
     * @param lookFor the next best reading, where one would tell something
     * @param last readings of the last visit by the start of their box's name
     * @param works words of the work that is planned and still to be done
     */
    record StopView(String unitId, String visitId, boolean visited, String label, String depot, String row, String place, String vehicle,
            String roofPosition, String make, String model, String serial, Optional<String> timeZone, String state, boolean toRetake, String likely,
            String condition, Optional<VerdictView.NextView> lookFor, Optional<String> lastVisitAt, Map<String, Shown> last,
            Optional<String> filterOverdueSince, List<String> works) {}

    List<StopView> of(VisitRound round) {
        List<VisitRound.Stop> stops = store.rounds().stops(round.id(), reach);
        Map<String, Standing> standings = store.standings().ofUnits(stops.stream().map(VisitRound.Stop::unitId).toList(), reach).stream()
                .collect(Collectors.toMap(Standing::unitId, Function.identity()));
        return stops.stream().filter(stop -> standings.containsKey(stop.unitId())).map(stop -> view(stop, standings.get(stop.unitId()))).toList();
    }

    private StopView view(VisitRound.Stop stop, Standing standing) {
        FleetUnit unit = store.units().find(stop.unitId()).orElseThrow();
        Optional<ZoneId> zone = Optional.ofNullable(depots.get(standing.depot())).flatMap(Depot::timeZone);
        LocalDate today = BecauseForm.today(store.clock(), zone.orElse(ZoneOffset.UTC));
        Optional<RecordedVisit> last = standing.lastVisitId().flatMap(store.visits()::find);
        return new StopView(stop.unitId(), stop.visitId(), stop.visited(), standing.label(), standing.depot(), stop.row(), stop.place(),
                standing.vehicle(), standing.roofPosition(), unit.make(), unit.model(), unit.serial(), zone.map(ZoneId::getId),
                YardRows.state(standing), standing.lastToRetake(), standing.judged().map(YardRows::likely).orElse(""),
                standing.judged().map(judged -> judged.condition().word()).orElse("none"), lookFor(standing),
                last.map(visit -> VisitRow.moment(visit.visit().at(), visit.visit().offset())),
                last.map(visit -> VisitBoxes.shown(visit.visit().readings(), system)).orElse(Map.of()),
                standing.days().filterDue().filter(day -> day.isBefore(today)).map(LocalDate::toString), works(stop.unitId()));
    }

    private List<String> works(String unitId) {
        return store.plans().toDo(unitId).stream().flatMap(plan -> plan.works().stream()).distinct().sorted().map(Boxes::word).toList();
    }

    /** Judged anew, because the next best reading is not kept; only where something is wrong. */
    private Optional<VerdictView.NextView> lookFor(Standing standing) {
        if (standing.judged().filter(YardRows::isFault).isEmpty()) {
            return Optional.empty();
        }
        List<Verdict> verdicts = store.judging().verdicts(standing.unitId());
        return verdicts.isEmpty() ? Optional.empty() : VerdictView.of(verdicts.get(verdicts.size() - 1), system).nextBestReading();
    }
}
