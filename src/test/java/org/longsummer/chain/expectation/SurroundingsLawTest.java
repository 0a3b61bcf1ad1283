package org.longsummer.chain.expectation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.screening.Screener;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.SupplyAt;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.VisitSketch;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Pressure;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.Voltage;
import org.longsummer.science.moistair.HylandWexler1983;
import org.longsummer.science.moistair.MoistAir;
import org.longsummer.science.uncertainty.Uncertain;

/** The conditions that a unit felt follow from the readings as they must, however they were read and whatever was not. */
class SurroundingsLawTest {
    private static final Instruments FINE = new Instruments(new TemperatureDifference(0.01), new TemperatureDifference(0.01), RelativeHumidity.percent(0.05), 0.001,
            new Current(0.01), new Voltage(0.1), false);
    private static final LocalDateTime NOON = LocalDateTime.of(2024, 6, 21, 12, 42);
    private static final LocalDateTime NIGHT = LocalDateTime.of(2024, 6, 21, 1, 0);

    private static ReadingsBuilder usual() {
        return new ReadingsBuilder().returnDryBulb(Temperature.fahrenheit(77)).supplyDryBulb(Temperature.fahrenheit(57)).ambientDryBulb(Temperature.fahrenheit(92))
                .ambientAt(AmbientAt.INLET).volts(new Voltage(117)).amps(new Current(12));
    }

    private static Surroundings read(LocalDateTime at, ReadingsBuilder readings) {
        return read(VisitSketch.unit("S"), at, readings, FINE, PowerSource.SHORE);
    }

    private static Surroundings read(Unit unit, LocalDateTime at, ReadingsBuilder readings, Instruments instruments, PowerSource power) {
        ZoneOffset offset = ZoneOffset.ofHours(-6);
        Visit visit = new Visit("v", unit.id(), at.toInstant(offset), offset, "Ada", instruments, readings.build(), FanSpeed.HIGH, power, FilterLook.NOT_LOOKED,
                CoilLook.NOT_LOOKED, false, Set.of(), "");
        return new SurroundingsReader(Screener.screen(unit, visit), UsualVolts.UNKNOWN).read(new Closings());
    }

    private static double sun(int month, int day, double hour) {
        LocalDateTime at = LocalDateTime.of(2025, month, day, 0, 0).plusSeconds(Math.round(hour * 3600));
        return read(at, usual()).sunHeight();
    }

    /** At noon of the sun it stands 90° less the latitude, 36°, plus its declination: 23.45° in June, none in March, −23.45° in December. */
    @Test
    void theSunStandsAsHighAsTheSeasonAndTheHourSay() {
        assertEquals(Math.sin(Math.toRadians(77.45)), sun(6, 21, 12.7), 1e-3);
        assertEquals(Math.sin(Math.toRadians(54)), sun(3, 22, 12.7), 1e-3);
        assertEquals(Math.sin(Math.toRadians(30.55)), sun(12, 21, 12.7), 1e-3);
        for (double away = 0.5; away < 12; away += 0.5) {
            assertEquals(sun(6, 21, 12.7 - Math.min(away, 12.7)), sun(6, 21, 12.7 + Math.min(away, 11.2)), away > 11 ? 0.1 : 1e-3, "as high before noon as after");
            assertTrue(away > 6.9 || sun(6, 21, 12.7 + away) < sun(6, 21, 12.7 + away - 0.5), "lower further from noon");
        }
        assertEquals(0, sun(3, 22, 18.71), 5e-3, "on the day of equal night it sets six hours after noon");
        assertTrue(sun(3, 22, 18.2) > 0.05);
        assertEquals(0, sun(6, 21, 1), 0, "at night");
    }

    @Test
    void airIsTheSameHoweverItsMoistureWasRead() {
        Pressure pressure = org.longsummer.science.moistair.StandardAtmosphere.pressure(Altitude.SEA_LEVEL);
        for (double percent : new double[] {25, 50, 75}) {
            MoistAir air = MoistAir.of(Temperature.fahrenheit(77), RelativeHumidity.percent(percent), pressure);
            Surroundings relative = read(NOON, usual().returnMoisture(new Moisture.Relative(RelativeHumidity.percent(percent))));
            Surroundings dew = read(NOON, usual().returnMoisture(new Moisture.DewPoint(air.dewPoint())));
            Surroundings wet = read(NOON, usual().returnMoisture(new Moisture.WetBulb(air.wetBulb())));
            for (Surroundings each : new Surroundings[] {relative, dew, wet}) {
                double humidity = each.returnAir().relativeHumidity().fraction();
                double allowed = 0.01 * Math.abs(Math.log(percent / 48)) + 1e-4;
                assertEquals(Math.log(percent / 100), Math.log(humidity), allowed, percent + " %: " + humidity);
                assertTrue(each.humidityRead() && each.lnHumidityU() < 0.031);
            }
        }
        Surroundings unread = read(NOON, usual());
        assertEquals(0.48, unread.returnAir().relativeHumidity().fraction(), 1e-9);
        assertEquals(0.40, unread.lnHumidityU(), 1e-9);
    }

    /** A coarser probe knows less of the moisture, through each of the three ways. */
    @Test
    void aCoarserProbeIsBelievedLess() {
        Instruments coarse = new Instruments(new TemperatureDifference(1), FINE.ambientProbe(), RelativeHumidity.percent(5), 0.01, new Current(0.1), new Voltage(1),
                false);
        Moisture[] moistures = {new Moisture.Relative(RelativeHumidity.percent(40)), new Moisture.WetBulb(Temperature.fahrenheit(62)),
            new Moisture.DewPoint(Temperature.fahrenheit(52))};
        for (Moisture moisture : moistures) {
            Unit unit = VisitSketch.unit("S");
            double fine = read(NOON, usual().returnMoisture(moisture)).lnHumidityU();
            double rough = read(unit, NOON, usual().returnMoisture(moisture), coarse, PowerSource.SHORE).lnHumidityU();
            assertTrue(rough > 1.8 * fine && rough < 0.2, moisture + ": " + fine + " then " + rough);
        }
    }

    /** Indoor air holds 0.85 of the outdoor air's moisture (practice); with the season's usual humidity it is one witness of two. */
    @Test
    void outdoorMoistureSpeaksForIndoorMoisture() {
        double usualLn = Math.log(0.48 * saturation(77));
        for (double percent : new double[] {20, 60}) {
            Surroundings felt = read(NOON, usual().ambientHumidity(RelativeHumidity.percent(percent)));
            double u = Math.sqrt(0.32 * 0.32 + Math.pow(0.0005 / (percent / 100), 2));
            double outdoors = Math.log(percent / 100 * saturation(92)) + Math.log(0.85);
            double mean = (outdoors / (u * u) + usualLn / 0.16) / (1 / (u * u) + 1 / 0.16);
            assertEquals(Math.exp(mean) / saturation(77), felt.returnAir().relativeHumidity().fraction(), 1e-6);
            assertEquals(1 / Math.sqrt(1 / (u * u) + 1 / 0.16), felt.lnHumidityU(), 1e-9);
        }
    }

    private static double saturation(double fahrenheit) {
        return HylandWexler1983.saturationPressure(Temperature.fahrenheit(fahrenheit)).pascals();
    }

    private static double condenserF(LocalDateTime at, AmbientAt where) {
        return read(at, usual().ambientAt(where)).condenserAir().fahrenheit();
    }

    /** At the inlet it is what was read; on the ground the sun's heat over the roof is missed, which there is none of at night; unknown lies between. */
    @Test
    void theRoofIsHotterThanTheGroundWhileTheSunShines() {
        assertEquals(92, condenserF(NOON, AmbientAt.INLET), 1e-9);
        double ground = condenserF(NOON, AmbientAt.GROUND);
        assertEquals(92 + 2.8 * 1.8 * read(NOON, usual()).sunHeight(), ground, 1e-9);
        assertEquals((92 + ground) / 2, condenserF(NOON, AmbientAt.UNKNOWN), 1e-9);
        assertEquals(92, condenserF(NIGHT, AmbientAt.GROUND), 1e-9);
        double inletU = read(NOON, usual()).condenserAirU();
        double groundU = read(NOON, usual().ambientAt(AmbientAt.GROUND)).condenserAirU();
        double unknownU = read(NOON, usual().ambientAt(AmbientAt.UNKNOWN)).condenserAirU();
        assertTrue(inletU < groundU && groundU < unknownU, inletU + ", " + groundU + ", " + unknownU);
    }

    @Test
    void aSecondThermometerAtTheCondenserIsAWitnessMore() {
        Surroundings both = read(NOON, usual().condenserEntering(Temperature.fahrenheit(94)));
        assertTrue(both.condenserAir().fahrenheit() > 92.5 && both.condenserAir().fahrenheit() < 93.5);
        assertEquals(read(NOON, usual()).condenserAirU() / Math.sqrt(2), both.condenserAirU(), 1e-3, "two that are as good as each other");
        Surroundings unread = read(NIGHT, new ReadingsBuilder().returnDryBulb(Temperature.fahrenheit(77)));
        assertEquals(86, unread.condenserAir().fahrenheit(), 1e-9);
        assertEquals(6.5, unread.condenserAirU(), 1e-9);
    }

    /** The ceiling: halfway between the room and the roof, and warmer for the sun on it; it follows either half the way. */
    @Test
    void theCeilingLiesBetweenRoomAndRoof() {
        assertEquals((77 + 92) / 2.0 + 6, read(NIGHT, usual()).cavity().fahrenheit(), 1e-9);
        Surroundings day = read(NOON, usual());
        assertEquals((77 + 92) / 2.0 + 6 + 9 * day.sunHeight(), day.cavity().fahrenheit(), 1e-9);
        double cavity = day.cavity().kelvins();
        assertEquals(cavity + 1, day.withCondenserAir(new Temperature(day.condenserAir().kelvins() + 2)).cavity().kelvins(), 1e-9);
        MoistAir warmer = MoistAir.of(new Temperature(day.returnAir().dryBulb().kelvins() + 3), RelativeHumidity.percent(50), day.returnAir().pressure());
        assertEquals(cavity + 1.5, day.withReturn(warmer).cavity().kelvins(), 1e-9);
        assertEquals(warmer, day.withReturn(warmer).returnAir());
    }

    @Test
    void theFurtherFromTheCoilTheMoreTheDuctHasWarmed() {
        double discharge = gain(AirDelivery.DUCTED, SupplyAt.DISCHARGE);
        assertEquals(discharge, gain(AirDelivery.NON_DUCTED, SupplyAt.DISCHARGE), 0, "there it has passed no duct");
        assertTrue(discharge < gain(AirDelivery.NON_DUCTED, SupplyAt.NEAR_REGISTER));
        assertTrue(gain(AirDelivery.NON_DUCTED, SupplyAt.NEAR_REGISTER) < gain(AirDelivery.UNKNOWN, SupplyAt.NEAR_REGISTER));
        assertTrue(gain(AirDelivery.UNKNOWN, SupplyAt.NEAR_REGISTER) < gain(AirDelivery.DUCTED, SupplyAt.NEAR_REGISTER));
        for (AirDelivery delivery : AirDelivery.values()) {
            assertTrue(gain(delivery, SupplyAt.FAR_REGISTER) > gain(delivery, SupplyAt.NEAR_REGISTER) && gain(delivery, SupplyAt.FAR_REGISTER) < 0.2);
        }
    }

    private static double gain(AirDelivery delivery, SupplyAt at) {
        Unit plain = VisitSketch.unit("S");
        Unit unit = new Unit("S", "S", "Alder Yard", plain.plate(), delivery, Optional.empty(), Altitude.SEA_LEVEL);
        return read(unit, NOON, usual().supplyAt(at), FINE, PowerSource.SHORE).ductGain();
    }

    @Test
    void voltsAreThoseReadOrThoseOfTheirSource() {
        Unit unit = VisitSketch.unit("S");
        Uncertain readVolts = read(NOON, usual()).voltageRatio();
        assertEquals(117 / 115.0, readVolts.value(), 1e-12);
        assertEquals(0.1 / 115, readVolts.standardUncertainty(), 1e-12);
        ReadingsBuilder unread = new ReadingsBuilder().returnDryBulb(Temperature.fahrenheit(77));
        Uncertain generator = read(unit, NOON, unread, FINE, PowerSource.GENERATOR).voltageRatio();
        assertEquals(119 / 115.0, generator.value(), 1e-12);
        assertEquals(2.5 / 115, generator.standardUncertainty(), 1e-12);
        Uncertain shore = read(unit, NOON, unread, FINE, PowerSource.SHORE).voltageRatio();
        assertEquals(UsualVolts.UNKNOWN.next(1).value() / 115, shore.value(), 1e-12);
        assertEquals(UsualVolts.UNKNOWN.next(1).standardUncertainty() / 115, shore.standardUncertainty(), 1e-12);
    }

    /** From the trade's figure to the unit's own mean as its readings grow, and never surer of the next visit than visits differ. */
    @Test
    void aUnitsOwnVoltsTakeOver() {
        Uncertain none = UsualVolts.UNKNOWN.next(1);
        assertEquals(116, none.value(), 1e-12);
        assertEquals(Math.hypot(2.8, 2.3), none.standardUncertainty(), 1e-12);
        Uncertain one = new UsualVolts(121, 1).next(1);
        double weight = 2.8 * 2.8 / (2.8 * 2.8 + 2.3 * 2.3);
        assertEquals(116 + weight * 5, one.value(), 1e-9);
        Uncertain many = new UsualVolts(121 * 1_000, 1_000).next(1);
        assertEquals(121, many.value(), 0.01);
        assertEquals(2.3, many.standardUncertainty(), 0.01);
        Uncertain twice = new UsualVolts(242, 1).next(2);
        assertEquals(2 * one.value(), twice.value(), 1e-9, "twice the volts, at another plate");
        assertEquals(2 * one.standardUncertainty(), twice.standardUncertainty(), 1e-9);
    }
}
