package org.longsummer.wire;

import java.util.LinkedHashMap;
import java.util.Map;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.Unit;
import org.longsummer.quantity.Decimal;

/** A unit as the boxes of its form: the way back from {@link UnitForm}. What only a fleet keeps of it is not among them. */
public final class UnitBoxes {
    private UnitBoxes() {}

    /** Texts by the names of the boxes; what is not known is left out. */
    public static Map<String, String> texts(Unit unit) {
        Plate plate = unit.plate();
        Map<String, String> boxes = new LinkedHashMap<>();
        boxes.put("label", unit.label());
        boxes.put("site", unit.site());
        plate.nominal().ifPresent(nominal -> boxes.put("nominal_btuh", Decimal.text(nominal.btuPerHour(), 0)));
        plate.refrigerant().ifPresent(refrigerant -> boxes.put("refrigerant", refrigerant));
        plate.ratedAmps().ifPresent(amps -> boxes.put("rated_amps", Decimal.text(amps.amperes(), 2)));
        boxes.put("rated_amps_kind", plate.ratedAmpsKind() == AmpsKind.UNKNOWN ? "" : Boxes.word(plate.ratedAmpsKind()));
        plate.ratedVolts().ifPresent(volts -> boxes.put("rated_volts", Decimal.text(volts.volts(), 1)));
        boxes.put("variable_speed", plate.variableSpeed() ? "yes" : "");
        boxes.put("soft_starter", plate.softStarter() ? "yes" : "");
        plate.capacitorLabel().ifPresent(label -> boxes.put("capacitor_label_uf", Decimal.text(label.microfarads(), 1)));
        boxes.put("air_delivery", unit.delivery() == AirDelivery.UNKNOWN ? "" : Boxes.word(unit.delivery()));
        unit.installedOn().ifPresent(day -> boxes.put("installed_on", day.toString()));
        boxes.put("altitude_m", Decimal.text(unit.altitude().metres(), 1));
        boxes.values().removeIf(String::isEmpty);
        return boxes;
    }
}
