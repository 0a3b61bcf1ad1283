package org.longsummer.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Wording;
import org.longsummer.store.Advised;
import org.longsummer.store.Depot;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Standing;
import org.longsummer.wire.Boxes;

/** Standings as rows of a list. */
final class YardRows {
    private final Map<String, Optional<ZoneId>> zones;
    private final Clock clock;

    YardRows(List<Depot> depots, Clock clock) {
        this.zones = depots.stream().collect(Collectors.toMap(Depot::name, Depot::timeZone));
        this.clock = clock;
    }

    /** A unit in the yard. {@code state} is that of its last judged visit, or {@code never_judged}. */
    record Row(String unitId, String label, String depot, String vehicle, String roofPosition, String duty, String state,
            boolean toRetake, String likely, String impact, Optional<String> since, Optional<String> lastVisitAt, int visitCount,
            Optional<UnitApi.DueView> nextCheck, DaysView days, Optional<AdvisedView> advised) {}

    /**
     * What is worth doing, what thirty days of waiting are expected to cost, absent where that is nothing, and the day by which it is
     * likely below the limit, where there is one ahead.
     */
    record AdvisedView(String option, String text, Optional<String> waiting, Optional<String> limitOn) {}

    /** What else is due, where it is known. */
    record DaysView(Optional<String> filterOverdueSince, Optional<String> warrantyEnds, Optional<String> plannedFor) {}

    List<Row> of(List<Standing> standings) {
        return standings.stream().map(this::of).toList();
    }

    Row of(Standing standing) {
        Optional<ZoneId> zone = zones.getOrDefault(standing.depot(), Optional.empty());
        LocalDate today = BecauseForm.today(clock, zone.orElse(ZoneOffset.UTC));
        return new Row(standing.unitId(), standing.label(), standing.depot(), standing.vehicle(), standing.roofPosition(),
                Boxes.word(standing.duty()), state(standing), standing.lastToRetake(), standing.judged().map(YardRows::likely).orElse(""),
                standing.judged().map(judged -> Wording.probability(judged.probabilityOfImpact())).orElse(""),
                standing.judged().filter(YardRows::isFault).flatMap(judged -> judged.since()).map(LocalDate::toString),
                standing.lastVisitAt().map(at -> VisitRow.moment(at, zone)), standing.visitCount(),
                standing.next().filter(next -> standing.duty() == FleetUnit.Duty.IN_SERVICE)
                        .map(next -> UnitApi.DueView.of(next, today)), days(standing.days(), today), standing.advised().map(advised -> advised(advised, today)));
    }

    private static AdvisedView advised(Advised advised, LocalDate today) {
        boolean costs = advised.waitingCosts().minor() > 0;
        return new AdvisedView(Boxes.word(advised.option()), Boxes.word(advised.option()) + ", " + advised.timing().phrase(),
                costs ? Optional.of(advised.waitingCosts().text()) : Optional.empty(),
                advised.limitOn().filter(day -> !day.isBefore(today)).map(LocalDate::toString));
    }

    private static DaysView days(Standing.Days days, LocalDate today) {
        return new DaysView(days.filterDue().filter(day -> day.isBefore(today)).map(LocalDate::toString),
                days.warrantyEnds().filter(day -> !day.isBefore(today)).map(LocalDate::toString), days.plannedFor().map(LocalDate::toString));
    }

    static String state(Standing standing) {
        return standing.judged().map(judged -> judged.state().word()).orElse(YardQuestion.NEVER_JUDGED);
    }

    static boolean isFault(Standing.Judged judged) {
        return judged.state() == State.ACT || judged.state() == State.DRIFTING;
    }

    static String likely(Standing.Judged judged) {
        if (!isFault(judged)) {
            return "";
        }
        if (judged.condition() == Condition.NOT_COOLING) {
            return judged.condition().phrase();
        }
        return judged.condition().phrase() + ": " + Wording.probability(judged.probabilityOfLikeliestFault());
    }
}
