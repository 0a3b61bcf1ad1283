package org.longsummer.web;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Plate;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.FleetUnit;
import org.longsummer.wire.Boxes;

/** A unit as the boxes of its form, so that it can be changed. */
final class UnitTexts {
    private UnitTexts() {}

    static Map<String, String> of(FleetUnit unit, UnitSystem system) {
        Map<String, String> boxes = new LinkedHashMap<>();
        boxes.put("label", unit.unit().label());
        boxes.put("site", unit.unit().site());
        boxes.put("vehicle", unit.vehicle());
        boxes.put("roof_position", unit.roofPosition());
        boxes.put("owner", unit.owner());
        boxes.put("make", unit.make());
        boxes.put("model", unit.model());
        boxes.put("serial", unit.serial());
        boxes.put(system == UnitSystem.US ? "altitude_ft" : "altitude_m",
                number(Optional.of(system == UnitSystem.US ? unit.unit().altitude().feet() : unit.unit().altitude().metres()), 0));
        addPlate(boxes, unit.unit().plate());
        boxes.put("air_delivery", unit.unit().delivery() == AirDelivery.UNKNOWN ? "" : Boxes.word(unit.unit().delivery()));
        boxes.put("installed_on", unit.unit().installedOn().map(LocalDate::toString).orElse(""));
        boxes.put("warranty_until", unit.warrantyUntil().map(LocalDate::toString).orElse(""));
        boxes.put("duty", Boxes.word(unit.duty()));
        return boxes;
    }

    private static void addPlate(Map<String, String> boxes, Plate plate) {
        boxes.put("nominal_btuh", number(plate.nominal().map(nominal -> nominal.btuPerHour()), 0));
        boxes.put("refrigerant", plate.refrigerant().orElse(""));
        boxes.put("rated_amps", number(plate.ratedAmps().map(amps -> amps.amperes()), 2));
        boxes.put("rated_amps_kind", plate.ratedAmpsKind() == AmpsKind.UNKNOWN ? "" : Boxes.word(plate.ratedAmpsKind()));
        boxes.put("rated_volts", number(plate.ratedVolts().map(volts -> volts.volts()), 1));
        boxes.put("capacitor_label_uf", number(plate.capacitorLabel().map(label -> label.microfarads()), 2));
        boxes.put("variable_speed", plate.variableSpeed() ? "yes" : "");
        boxes.put("soft_starter", plate.softStarter() ? "yes" : "");
    }

    private static String number(Optional<Double> number, int decimals) {
        return number.map(given -> {
            String text = Decimal.text(given, decimals);
            return decimals == 0 ? text : text.replaceAll("0+$", "").replaceAll("\\.$", "");
        }).orElse("");
    }
}
