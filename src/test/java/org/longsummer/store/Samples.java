package org.longsummer.store;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.SupplyAt;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.quantity.Voltage;

/** Invented units and visits with every field set, to see that nothing is lost. */
final class Samples {
    private Samples() {}

    static FleetUnit unit(String id) {
        Plate plate = new Plate(Optional.of(CoolingCapacity.btuPerHour(13_500)), Optional.of("R-32"), Optional.of(new Current(12.7)),
                AmpsKind.RLA_PLUS_FAN, Optional.of(new Voltage(115)), false, true, Optional.of(new Capacitance(45)));
        Unit unit = new Unit(id, "Wagon " + id, "Ferrow Flats", plate, AirDelivery.DUCTED, Optional.of(LocalDate.of(2019, 4, 2)),
                Altitude.feet(1_230));
        return new FleetUnit(unit, "Nimbell", "NB-135", "SO1-5I " + id, "Van 12", "rear", "Ferrow Rentals",
                Optional.of(LocalDate.of(2027, 4, 1)), FleetUnit.Duty.IN_SERVICE);
    }

    static Readings readings() {
        return new ReadingsBuilder().returnDryBulb(Temperature.fahrenheit(77.3))
                .returnMoisture(new Moisture.Relative(RelativeHumidity.percent(51))).supplyDryBulb(Temperature.fahrenheit(57.1))
                .supplyAt(SupplyAt.NEAR_REGISTER).ambientDryBulb(Temperature.fahrenheit(91.7)).ambientAt(AmbientAt.INLET)
                .ambientHumidity(RelativeHumidity.percent(38)).amps(new Current(12.13)).volts(new Voltage(117))
                .runTime(new RunTime(19)).condenserEntering(Temperature.fahrenheit(93.1)).condenserLeaving(Temperature.fahrenheit(112.9))
                .roomDryBulb(Temperature.fahrenheit(78)).fanOnlyAmps(new Current(2.7)).startPeak(new Current(58))
                .capacitor(new Capacitance(44.1)).build();
    }

    static Visit visit(String id, String unitId, String moment) {
        return new Visit(id, unitId, Instant.parse(moment), ZoneOffset.ofHoursMinutes(-3, -30), "Ines", Instruments.DEFAULT, readings(),
                FanSpeed.HIGH, PowerSource.GENERATOR, FilterLook.DIRTY, CoilLook.LIGHT, false, Set.of(Work.FILTER, Work.CAPACITOR),
                "windy; \"gusts\"");
    }

    /** The same an hour later. */
    static Visit later(Visit visit, String id) {
        return new Visit(id, visit.unitId(), visit.at().plusSeconds(3_600), visit.offset(), visit.technician(), visit.instruments(), visit.readings(),
                visit.fanSpeed(), visit.powerSource(), visit.filter(), visit.coil(), visit.icedCoil(), visit.workDone(), visit.notes());
    }

    static Entry entry(String id, String unitId, String moment) {
        return Entry.of(visit(id, unitId, moment), new Typed(UnitSystem.US, Map.of("return_db_f", "77.30", "supply_db_f", "57.1")), "ines");
    }

    static Entry correction(String id, String correctsId, String unitId, String moment) {
        return new Entry(visit(id, unitId, moment), Typed.nothing(UnitSystem.SI), "otto",
                Optional.of(new Correction(correctsId, "read the wrong unit")));
    }
}
