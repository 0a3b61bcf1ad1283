package org.longsummer.fleet;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.longsummer.chain.UnitAhead;
import org.longsummer.chain.UnitAhead.Assumed;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.outlook.FaultModel;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.outlook.TypicalWeather;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.weighing.PriceList;
import org.longsummer.quantity.Altitude;

/** What is said, after the last visit of a season, of a unit as it will stand at the first visit of the next, against what then was. */
record AcrossWinters(List<Said> all) {
    private static final int WINTER_DAYS = 150;
    private static final PriceList PRICES = PriceList.defaults("USD");

    /** The probability that it is past the limit by then, and whether it was. */
    record Said(double probability, boolean past) {}

    static AcrossWinters of(SimulatedFleet fleet, Map<String, Verdict> verdicts) {
        Map<String, List<Verdict>> ofUnits = new TreeMap<>();
        fleet.visits().stream().map(visit -> verdicts.get(visit.id())).sorted((a, b) -> a.visit().at().compareTo(b.visit().at()))
                .forEach(verdict -> ofUnits.computeIfAbsent(verdict.visit().unitId(), id -> new ArrayList<>()).add(verdict));
        Map<Altitude, FaultModel> faults = new HashMap<>();
        List<Said> all = new ArrayList<>();
        ofUnits.forEach((id, ofUnit) -> {
            Unit unit = fleet.units().get(id);
            FaultModel model = faults.computeIfAbsent(unit.altitude(), TypicalWeather::faultModel);
            for (int i = 1; i < ofUnit.size(); i++) {
                LocalDate next = day(ofUnit, i);
                if (ChronoUnit.DAYS.between(day(ofUnit, i - 1), next) >= WINTER_DAYS) {
                    all.add(new Said(past(unit, ofUnit.subList(0, i), next, model), fleet.truth().get(ofUnit.get(i).visit().id()).hasImpact()));
                }
            }
        });
        return new AcrossWinters(all);
    }

    private static LocalDate day(List<Verdict> verdicts, int index) {
        return verdicts.get(index).visit().localDay();
    }

    private static double past(Unit unit, List<Verdict> verdicts, LocalDate day, FaultModel model) {
        Assumed assumed = new Assumed(PRICES, SeasonClock.NORTHERN, Optional.empty(), Optional.empty(), false, LifeCurve.RENTAL, model);
        return UnitAhead.of(unit, verdicts, day, assumed).outlook().limit().alreadyPast();
    }

    double said() {
        return all.stream().mapToDouble(Said::probability).average().orElseThrow();
    }

    /** Share of those that were past the limit, among all that were given a probability from one figure up to another. */
    double past(double from, double below) {
        return all.stream().filter(each -> each.probability() >= from && each.probability() < below).mapToDouble(each -> each.past() ? 1 : 0)
                .average().orElseThrow();
    }
}
