package org.longsummer.web;

import java.util.Map;
import java.util.Optional;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.Unit;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Voltage;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.FleetUnit.Duty;

/** A unit as it comes from a form: its plate and its place. Everything but a name may be left empty. */
final class UnitForm {
    private static final int LONGEST = 120;

    private final Boxes boxes;

    UnitForm(Map<String, String> texts) {
        boxes = new Boxes(texts == null ? Map.of() : texts);
    }

    /** What people call it. */
    String label() {
        return boxes.text("label", LONGEST);
    }

    /** The depot's name; empty when none was given. */
    String depot() {
        return boxes.text("site").orElse("");
    }

    /**
     * The unit of this id.
     *
     * @param depotAltitude of a depot that is known already
     * @throws Refused with all problems at once
     */
    FleetUnit unit(String id, Optional<Altitude> depotAltitude) {
        String label = label();
        if (label.isEmpty()) {
            boxes.refuse("label", "A unit needs a name.", "Type what you call it, for example the vehicle's number and “front”.");
        }
        Unit unit = new Unit(id, label, boxes.text("site", LONGEST), plate(),
                boxes.choice("air_delivery", AirDelivery.class, AirDelivery.UNKNOWN), boxes.day("installed_on"),
                altitude().or(() -> depotAltitude).orElse(Altitude.SEA_LEVEL));
        FleetUnit fleetUnit = new FleetUnit(unit, boxes.text("make", LONGEST), boxes.text("model", LONGEST), boxes.text("serial", LONGEST),
                boxes.text("vehicle", LONGEST), boxes.text("roof_position", LONGEST), boxes.text("owner", LONGEST),
                boxes.day("warranty_until"), boxes.choice("duty", Duty.class, Duty.IN_SERVICE));
        boxes.refuseIfWrong();
        return fleetUnit;
    }

    private Plate plate() {
        Optional<CoolingCapacity> nominal = boxes.largeNumber("nominal_btuh", 4_000, 60_000, "Btu/h").map(CoolingCapacity::btuPerHour);
        return new Plate(nominal, Optional.of(boxes.text("refrigerant", 20)).filter(text -> !text.isEmpty()),
                boxes.number("rated_amps", 1, 60, "A").map(Current::new),
                boxes.choice("rated_amps_kind", AmpsKind.class, AmpsKind.UNKNOWN),
                boxes.number("rated_volts", 90, 300, "V").map(Voltage::new), boxes.isYes("variable_speed"), boxes.isYes("soft_starter"),
                boxes.number("capacitor_label_uf", 1, 200, "µF").map(Capacitance::new));
    }

    private Optional<Altitude> altitude() {
        Optional<Altitude> feet = boxes.largeNumber("altitude_ft", -1_400, 20_000, "ft").map(Altitude::feet);
        return feet.or(() -> boxes.largeNumber("altitude_m", -430, 6_100, "m").map(Altitude::new));
    }
}
