package org.longsummer.store;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.Unit;

/** A unit's fields as texts, by the names of the columns of CSV files, to say what was changed. */
final class UnitFields {
    private static final MathContext DIGITS = new MathContext(6);

    private UnitFields() {}

    /** What differs, as it was and as it is. */
    record Difference(Map<String, String> before, Map<String, String> after) {
        static Difference between(FleetUnit before, FleetUnit after) {
            Map<String, String> was = new LinkedHashMap<>(of(before));
            Map<String, String> is = new LinkedHashMap<>(of(after));
            is.keySet().removeIf(name -> is.get(name).equals(was.get(name)));
            was.keySet().retainAll(is.keySet());
            return new Difference(was, is);
        }

        boolean isNone() {
            return after.isEmpty();
        }
    }

    static Map<String, String> of(FleetUnit fleetUnit) {
        Unit unit = fleetUnit.unit();
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("label", unit.label());
        fields.put("site", unit.site());
        fields.put("vehicle", fleetUnit.vehicle());
        fields.put("position", fleetUnit.roofPosition());
        fields.put("altitude_m", number(Optional.of(unit.altitude().metres())));
        fields.put("make", fleetUnit.make());
        fields.put("model", fleetUnit.model());
        fields.put("serial", fleetUnit.serial());
        addPlate(fields, unit.plate());
        fields.put("ducted", unit.delivery() == AirDelivery.UNKNOWN ? "" : unit.delivery() == AirDelivery.DUCTED ? "yes" : "no");
        fields.put("installed_on", unit.installedOn().map(LocalDate::toString).orElse(""));
        fields.put("warranty_until", fleetUnit.warrantyUntil().map(LocalDate::toString).orElse(""));
        fields.put("owner", fleetUnit.owner());
        fields.put("duty", Column.word(fleetUnit.duty(), null));
        return fields;
    }

    private static void addPlate(Map<String, String> fields, Plate plate) {
        fields.put("nominal_btuh", number(plate.nominal().map(nominal -> nominal.btuPerHour())));
        fields.put("refrigerant", plate.refrigerant().orElse(""));
        fields.put("rated_amps", number(plate.ratedAmps().map(amps -> amps.amperes())));
        fields.put("rated_amps_kind", Optional.ofNullable(Column.word(plate.ratedAmpsKind(), AmpsKind.UNKNOWN)).orElse(""));
        fields.put("rated_volts", number(plate.ratedVolts().map(volts -> volts.volts())));
        fields.put("capacitor_label_uf", number(plate.capacitorLabel().map(label -> label.microfarads())));
        fields.put("soft_starter", plate.softStarter() ? "yes" : "");
        fields.put("variable_speed", plate.variableSpeed() ? "yes" : "");
    }

    private static String number(Optional<Double> number) {
        return number.map(given -> given == 0 ? "0" : new BigDecimal(given).round(DIGITS).stripTrailingZeros().toPlainString()).orElse("");
    }
}
