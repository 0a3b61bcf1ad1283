package org.longsummer.chain.condition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.screening.Field;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.quantity.Voltage;

/** What may be said as a reason: only what tells the fault from a sound unit. */
class ReasonsLawTest {
    private final List<Visit> visits = new ArrayList<>();

    private void visit(String day, double supplyF, double amps, Work... work) {
        var readings = new ReadingsBuilder().returnDryBulb(Temperature.fahrenheit(79))
                .returnMoisture(new Moisture.Relative(RelativeHumidity.percent(48))).supplyDryBulb(Temperature.fahrenheit(supplyF))
                .ambientDryBulb(Temperature.fahrenheit(93)).ambientAt(AmbientAt.INLET).amps(new Current(amps)).volts(new Voltage(116))
                .runTime(new RunTime(20)).build();
        visits.add(new Visit("V" + visits.size(), "U1", Instant.parse(day + ":00Z"), ZoneOffset.UTC, "Noor", Instruments.DEFAULT, readings,
                FanSpeed.HIGH, PowerSource.SHORE, FilterLook.CLEAN, CoilLook.NOT_LOOKED, false, Set.of(work), ""));
    }

    private List<Verdict> verdicts() {
        Plate plate = new Plate(Optional.of(CoolingCapacity.btuPerHour(13_500)), Optional.of("R-410A"), Optional.of(new Current(12.4)),
                AmpsKind.INPUT, Optional.of(new Voltage(115)), false, false, Optional.empty());
        Unit unit = new Unit("U1", "Heron 12 front", "Birch Landing", plate, AirDelivery.NON_DUCTED, Optional.empty(), Altitude.feet(800));
        return Assessment.ofUnit(unit, visits, new Closings());
    }

    /** So certain a fault that no history without one is left to compare with. */
    private Verdict dirtyCondenser() {
        for (int month = 5; month <= 9; month++) {
            visit("2029-0" + month + "-20T12:00", 59.3, 12.1);
        }
        for (int month = 5; month <= 9; month++) {
            visit("2030-0" + month + "-20T12:00", 59.8 + 0.2 * month, 12.6 + 0.6 * (month - 4));
        }
        List<Verdict> all = verdicts();
        return all.get(all.size() - 1);
    }

    @Test
    void aCleanFilterSaysNothingOfACondenserCoil() {
        Verdict last = dirtyCondenser();
        assertEquals(State.ACT, last.state());
        assertTrue(last.probabilities().of(Condition.NONE) < 1e-4, () -> "as sure as that: " + last.probabilities());
        assertFalse(last.evidence().isEmpty());
        for (Evidence reason : last.evidence()) {
            assertTrue(last.condition() != Condition.EVAPORATOR_FOULING && reason.field() != Field.FILTER, reason::toString);
        }
    }

    @Test
    void aReadingFurtherOffSpeaksLouder() {
        Verdict last = dirtyCondenser();
        List<Evidence> amps = last.evidence().stream().filter(reason -> reason.field() == Field.AMPS).toList();
        Evidence newest = amps.stream().filter(reason -> reason.visitId().equals(last.visit().id())).findFirst().orElseThrow();
        assertTrue(newest.weight() > Math.log(100), () -> "far above what is expected: " + newest);
    }

    @Test
    void theUncertaintyInASentenceIsTheExpandedOne() {
        Verdict last = dirtyCondenser();
        Evidence reason = last.evidence().stream().filter(some -> some.field() == Field.AMPS).findFirst().orElseThrow();
        String expanded = new Current(2 * ((Current) reason.expectedU().orElseThrow()).amperes()).text(UnitSystem.US);
        assertTrue(Wording.reason(reason, UnitSystem.US).contains(" ± " + expanded + ":"), () -> Wording.reason(reason, UnitSystem.US));
    }

    @Test
    void oneVisitIsSaidToSayLittle() {
        visit("2029-05-20T12:00", 59.3, 12.1);
        visit("2029-06-20T12:00", 59.3, 12.1, Work.UNIT_REPLACED);
        visit("2029-07-20T12:00", 59.3, 12.1);
        List<Verdict> all = verdicts();
        assertEquals(State.STEADY, all.get(0).state());
        assertTrue(Wording.sentence(all.get(0), UnitSystem.US).contains("one visit says little"));
        assertFalse(Wording.sentence(all.get(1), UnitSystem.US).contains("one visit says little"));
        assertTrue(Wording.sentence(all.get(2), UnitSystem.US).contains("one visit says little"), "the machine that took its place");
    }
}
