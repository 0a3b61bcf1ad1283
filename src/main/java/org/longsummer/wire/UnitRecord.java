package org.longsummer.wire;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.season.Climate;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.Unit;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Voltage;


/** What the chain judges a unit by, as JSON: in SI, named like the columns of the store. */
public final class UnitRecord {
    private UnitRecord() {}

    public static void write(JsonWriter json, Unit unit) {
        Plate plate = unit.plate();
        json.object(() -> {
            unit.clock().map(SeasonClock::climate).ifPresent(climate -> write(json, climate));
            plate(json, unit, plate);
        });
    }

    private static void plate(JsonWriter json, Unit unit, Plate plate) {
        json.field("id", unit.id()).field("label", unit.label()).field("depot", unit.site())
                .field("nominal_capacity_w", plate.nominal().map(CoolingCapacity::watts)).field("refrigerant", plate.refrigerant())
                .field("rated_amps_a", plate.ratedAmps().map(Current::amperes)).field("rated_amps_kind", Boxes.word(plate.ratedAmpsKind()))
                .field("rated_volts_v", plate.ratedVolts().map(Voltage::volts)).field("variable_speed", plate.variableSpeed())
                .field("soft_starter", plate.softStarter()).field("capacitor_label_uf", plate.capacitorLabel().map(Capacitance::microfarads))
                .field("air_delivery", Boxes.word(unit.delivery())).field("installed_on", unit.installedOn())
                .field("altitude_m", unit.altitude().metres());
    }

    private static void write(JsonWriter json, Climate climate) {
        json.object("climate", () -> json.field("opens_month", climate.opens().getMonthValue()).field("opens_day", climate.opens().getDayOfMonth())
                .field("closes_month", climate.closes().getMonthValue()).field("closes_day", climate.closes().getDayOfMonth())
                .array("run_hours_per_day", climate.runHoursPerDay(), json::value));
    }

    private static Optional<SeasonClock> clock(Fields json) {
        Fields climate = json.object("climate");
        if (climate.members().isEmpty()) {
            return Optional.empty();
        }
        List<Double> hours = climate.items("run_hours_per_day").stream().map(Double.class::cast).toList();
        return Optional.of(new SeasonClock(new Climate(hours,
                MonthDay.of((int) climate.number("opens_month"), (int) climate.number("opens_day")),
                MonthDay.of((int) climate.number("closes_month"), (int) climate.number("closes_day")))));
    }

    public static Unit read(Fields json) {
        Plate plate = new Plate(json.quantity("nominal_capacity_w", CoolingCapacity::new), json.optionalText("refrigerant"),
                json.quantity("rated_amps_a", Current::new), json.choice("rated_amps_kind", AmpsKind.values(), AmpsKind.UNKNOWN),
                json.quantity("rated_volts_v", Voltage::new), json.isTrue("variable_speed"), json.isTrue("soft_starter"),
                json.quantity("capacitor_label_uf", Capacitance::new));
        return new Unit(json.text("id"), json.text("label"), json.text("depot"), plate,
                json.choice("air_delivery", AirDelivery.values(), AirDelivery.UNKNOWN), json.day("installed_on"),
                new Altitude(json.number("altitude_m")), clock(json));
    }
}
