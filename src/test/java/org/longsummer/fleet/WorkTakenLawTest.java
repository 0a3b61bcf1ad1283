package org.longsummer.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.UnitAhead.Assumed;
import org.longsummer.chain.UnitAhead;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Hypothesis;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.outlook.TypicalWeather;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.PriceList;

/** Work of the last visit counts in what lies ahead, though nobody has read the unit since, and is not proposed again. */
class WorkTakenLawTest {
    private static final SimulatedFleet FLEET = SimulatedFleet.dev();

    /** A unit and its visits up to one at which its condenser coil is very likely dirty. */
    private record Dirty(Unit unit, List<Visit> visits) {
        UnitAhead ahead(Set<Work> done) {
            List<Visit> all = new ArrayList<>(visits.subList(0, visits.size() - 1));
            all.add(worked(visits.get(visits.size() - 1), done));
            List<Verdict> verdicts = Assessment.ofUnit(unit, all, new Closings());
            LocalDate day = verdicts.get(verdicts.size() - 1).visit().localDay();
            return UnitAhead.of(unit, verdicts, day, new Assumed(PriceList.defaults("USD"), SeasonClock.NORTHERN, Optional.empty(), Optional.empty(),
                    false, LifeCurve.RENTAL, TypicalWeather.faultModel(unit.altitude())));
        }
    }

    private static Visit worked(Visit visit, Set<Work> done) {
        return new Visit(visit.id(), visit.unitId(), visit.at(), visit.offset(), visit.technician(), visit.instruments(), visit.readings(),
                visit.fanSpeed(), visit.powerSource(), visit.filter(), visit.coil(), visit.icedCoil(), done, visit.notes());
    }

    private static double probability(UnitAhead ahead, Fault fault) {
        return ahead.standing().hypotheses().stream().filter(state -> state.isOf(fault)).mapToDouble(Hypothesis::weight).sum();
    }

    private static List<Dirty> dirty() {
        List<Dirty> dirty = new ArrayList<>();
        for (Map.Entry<String, Unit> entry : FLEET.units().entrySet()) {
            List<Visit> visits = FLEET.visits().stream().filter(visit -> visit.unitId().equals(entry.getKey())).sorted(Assessment.IN_ORDER).toList();
            List<Verdict> verdicts = Assessment.ofUnit(entry.getValue(), visits, new Closings());
            for (int i = 0; i < verdicts.size(); i++) {
                if (verdicts.get(i).condition() == Condition.CONDENSER_FOULING && verdicts.get(i).probabilityOfImpact() > 0.8) {
                    dirty.add(new Dirty(entry.getValue(), visits.subList(0, i + 1)));
                    break;
                }
            }
        }
        return dirty;
    }

    @Test
    void aCleanedCoilIsNotCleanedAgainAndTheRestStaysAsItWas() {
        List<Dirty> all = dirty();
        assertTrue(all.size() >= 3, () -> all.size() + " units with a dirty condenser coil");
        for (Dirty unit : all) {
            UnitAhead before = unit.ahead(Set.of());
            UnitAhead after = unit.ahead(Set.of(Work.CONDENSER_COIL));
            assertTrue(before.outlook().limit().alreadyPast() > after.outlook().limit().alreadyPast() + 0.2);
            assertTrue(after.outlook().limit().alreadyPast() <= 1 - probability(before, Fault.CONDENSER_COIL) + 1e-9);
            assertFalse(after.advice().works().contains(Work.CONDENSER_COIL));
            assertEquals(probability(before, Fault.REFRIGERANT), probability(after, Fault.REFRIGERANT), 1e-12);
            assertTrue(after.limitInWords(Object::toString).startsWith("The work of " + after.seen().on() + " is taken to have helped"));
            assertFalse(before.limitInWords(Object::toString).startsWith("The work of"));
        }
    }

    @Test
    void workOnSomethingElseChangesNothingAboutTheCoil() {
        Dirty unit = dirty().get(0);
        assertEquals(probability(unit.ahead(Set.of()), Fault.CONDENSER_COIL),
                probability(unit.ahead(Set.of(Work.CAPACITOR)), Fault.CONDENSER_COIL), 1e-12);
    }

    @Test
    void anotherMachineInThePlaceStartsWithoutAHistoryAndNew() {
        UnitAhead after = dirty().get(0).ahead(Set.of(Work.UNIT_REPLACED));
        assertFalse(after.standing().hasHistory());
        assertEquals(0, after.standing().ageYears().orElseThrow());
    }
}
