package org.longsummer.wire;

import java.util.List;
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

/** A unit as it comes from a form: its plate and its place. Everything but a name may be left empty. */
public final class UnitForm {
    private static final int LONGEST = 120;

    private final Boxes boxes;

    /** @param texts by the names of the boxes; null for none */
    public UnitForm(Map<String, String> texts) {
        boxes = new Boxes(texts == null ? Map.of() : texts);
    }

    /** What people call it. */
    public String label() {
        return boxes.text("label", LONGEST);
    }

    /** The depot's name; empty when none was given. */
    public String depot() {
        return boxes.text("site").orElse("");
    }

    /**
     * What the chain judges the unit by, as far as it can be read; {@link #problems()} then names the rest.
     *
     * @param depotAltitude of a depot that is known already
     */
    public Unit unit(String id, Optional<Altitude> depotAltitude) {
        String label = label();
        if (label.isEmpty()) {
            boxes.refuse("label", "A unit needs a name.", "Type what you call it, for example the vehicle's number and “front”.");
        }
        return new Unit(id, label, boxes.text("site", LONGEST), plate(),
                boxes.choice("air_delivery", AirDelivery.class, AirDelivery.UNKNOWN), boxes.day("installed_on"),
                altitude().or(() -> depotAltitude).orElse(Altitude.SEA_LEVEL));
    }

    /** Make, model, serial, vehicle, place on the roof or owner. */
    public String text(String box) {
        return boxes.text(box, LONGEST);
    }

    /** The boxes themselves, for what only a fleet keeps. */
    public Boxes boxes() {
        return boxes;
    }

    /** What was wrong with the boxes that were read so far. */
    public List<Problem> problems() {
        return boxes.problems();
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
