package org.longsummer.wire;

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
        json.object(() -> json.field("id", unit.id()).field("label", unit.label()).field("depot", unit.site())
                .field("nominal_capacity_w", plate.nominal().map(CoolingCapacity::watts)).field("refrigerant", plate.refrigerant())
                .field("rated_amps_a", plate.ratedAmps().map(Current::amperes)).field("rated_amps_kind", Boxes.word(plate.ratedAmpsKind()))
                .field("rated_volts_v", plate.ratedVolts().map(Voltage::volts)).field("variable_speed", plate.variableSpeed())
                .field("soft_starter", plate.softStarter()).field("capacitor_label_uf", plate.capacitorLabel().map(Capacitance::microfarads))
                .field("air_delivery", Boxes.word(unit.delivery())).field("installed_on", unit.installedOn())
                .field("altitude_m", unit.altitude().metres()));
    }

    public static Unit read(Fields json) {
        Plate plate = new Plate(json.quantity("nominal_capacity_w", CoolingCapacity::new), json.optionalText("refrigerant"),
                json.quantity("rated_amps_a", Current::new), json.choice("rated_amps_kind", AmpsKind.values(), AmpsKind.UNKNOWN),
                json.quantity("rated_volts_v", Voltage::new), json.isTrue("variable_speed"), json.isTrue("soft_starter"),
                json.quantity("capacitor_label_uf", Capacitance::new));
        return new Unit(json.text("id"), json.text("label"), json.text("depot"), plate,
                json.choice("air_delivery", AirDelivery.values(), AirDelivery.UNKNOWN), json.day("installed_on"),
                new Altitude(json.number("altitude_m")));
    }
}
