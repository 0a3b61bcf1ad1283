package org.longsummer.chain.expectation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.longsummer.chain.visit.VisitSketch.NOT_READ;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.departure.Departure;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.screening.Finding;
import org.longsummer.chain.screening.Mistake;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.VisitSketch;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.Voltage;

/** What the trade says of a sound unit, without a source, and that a weaker set of readings gets a weaker answer and not silence. */
class SoundUnitPracticeTest {
    private static final Unit UNIT = VisitSketch.unit("P1");

    private static Departure departure(VisitSketch sketch) {
        return verdict(UNIT, sketch).departure();
    }

    private static Verdict verdict(Unit unit, VisitSketch sketch) {
        return Assessment.ofUnit(unit, List.of(sketch.visit("v", unit)), new Closings()).get(0);
    }

    private static double amps(Departure departure) {
        return departure.expectedAmps().orElseThrow().value().amperes();
    }

    private static double ampsU(Departure departure) {
        return departure.expectedAmps().orElseThrow().standardUncertainty().amperes() / amps(departure);
    }

    private static double splitF(Departure departure) {
        return departure.expectedSplit().orElseThrow().value().fahrenheit();
    }

    private static double splitU(Departure departure) {
        return departure.expectedSplit().orElseThrow().standardUncertainty().fahrenheit() / splitF(departure);
    }

    /** A 13,500 Btu/h unit: about 10.2 A at 75 °F outdoors, 10.5 to 14 A when it is hotter. */
    @Test
    void ampsWithTheDay() {
        assertEquals(10.2, amps(departure(new VisitSketch().returnAir(80, 51).ambient(75))), 0.4);
        for (double outdoor = 80; outdoor <= 115; outdoor += 5) {
            double amps = amps(departure(new VisitSketch().returnAir(80, 51).ambient(outdoor)));
            assertTrue(amps > 10.3 && amps < 14.2, outdoor + " °F: " + amps + " A");
        }
    }

    /** About 20 °F at the makers' 80 °F and 50 % humidity; makers' own statements go from 10 to 20, sound units read some degrees more. */
    @Test
    void splitNearTwenty() {
        assertEquals(20, splitF(departure(new VisitSketch().returnAir(80, 50).ambient(95))), 2.5);
    }

    @Test
    void lowVoltsRaiseTheAmps() {
        double low = amps(departure(new VisitSketch().volts(104))) / amps(departure(new VisitSketch()));
        assertTrue(low > 1.06 && low < 1.12, "at 104 V: " + low);
    }

    @Test
    void aWeakerSetOfReadingsGetsAWiderAnswer() {
        Departure all = departure(new VisitSketch());
        assertTrue(splitU(departure(new VisitSketch().returnAir(77, NOT_READ))) > 1.3 * splitU(all), "without humidity");
        assertTrue(ampsU(departure(new VisitSketch().volts(NOT_READ))) > ampsU(all), "without volts");
        assertTrue(ampsU(departure(new VisitSketch().ambient(NOT_READ))) > ampsU(all), "without outdoor air");
        assertTrue(ampsU(departure(new VisitSketch().minutes(8))) > ampsU(all), "eight minutes");
        assertTrue(ampsU(departure(new VisitSketch().ambient(65))) > ampsU(departure(new VisitSketch().ambient(80))), "a cool day");
    }

    @Test
    void splitAloneIsAnswered() {
        VisitSketch kitchenThermometer = new VisitSketch().returnAir(77, NOT_READ).ambient(NOT_READ).volts(NOT_READ).amps(NOT_READ)
                .minutes(NOT_READ);
        Verdict verdict = verdict(UNIT, kitchenThermometer);
        assertTrue(verdict.departure().split().isPresent());
        assertTrue(verdict.departure().amps().isEmpty());
        assertEquals(State.STEADY, verdict.state());
    }

    @Test
    void ampsAloneAreAnswered() {
        Verdict verdict = verdict(UNIT, new VisitSketch().split(NOT_READ));
        assertTrue(verdict.departure().split().isEmpty());
        assertTrue(verdict.departure().amps().isPresent());
        assertEquals(State.STEADY, verdict.state());
    }

    @Test
    void aVariableSpeedUnitsAmpsAreNotJudgedAndThatIsSaid() {
        Plate plate = new Plate(Optional.of(CoolingCapacity.btuPerHour(13_500)), Optional.of("R-32"), Optional.empty(), AmpsKind.UNKNOWN,
                Optional.of(new Voltage(115)), true, false, Optional.empty());
        Unit unit = new Unit("P2", "P2", "Alder Yard", plate, AirDelivery.NON_DUCTED, Optional.empty(), Altitude.SEA_LEVEL);
        Verdict verdict = verdict(unit, new VisitSketch().amps(6.2));
        assertTrue(verdict.departure().split().isPresent());
        assertTrue(verdict.departure().amps().isEmpty());
        assertTrue(verdict.departure().expectedAmps().isEmpty());
        assertEquals(State.STEADY, verdict.state());
        assertTrue(verdict.findings().stream().anyMatch(f -> f.mistake() == Mistake.VARIABLE_SPEED && !f.retake()));
        assertFalse(verdict.findings().stream().anyMatch(Finding::retake));
    }

    /** Read on the ground the heat over the roof is missed: expected amps are higher than for the same number read at the inlet. */
    @Test
    void whereTheOutdoorAirWasReadMatters() {
        Departure inlet = departure(new VisitSketch());
        Departure ground = departure(new VisitSketch().ambientAt(AmbientAt.GROUND));
        assertTrue(amps(ground) > amps(inlet) && ampsU(ground) > ampsU(inlet));
    }

    @Test
    void aBetterThermometerIsBelieved() {
        Instruments d = Instruments.DEFAULT;
        Instruments fine = new Instruments(TemperatureDifference.fahrenheit(0.2), d.ambientProbe(), d.humidity(), d.clampRelative(),
                d.clampFloor(), d.voltage(), false);
        assertTrue(splitU(departure(new VisitSketch().instruments(fine))) < splitU(departure(new VisitSketch())));
    }
}
