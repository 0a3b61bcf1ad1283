package org.longsummer.files;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

/** The columns of a {@code units.csv}. */
final class UnitColumns {
    static final List<String> WRITTEN = List.of("unit_id", "label", "site", "nominal_btuh", "refrigerant", "rated_amps", "rated_volts",
            "ducted", "installed_on", "altitude_ft", "rated_amps_kind", "serial", "vehicle", "position", "capacitor_label_uf",
            "soft_starter", "variable_speed", "make", "model", "owner", "warranty_until", "duty");
    static final Layout LAYOUT = new Layout(concat(WRITTEN, "altitude_m"), List.of(List.of("unit_id")));

    private UnitColumns() {}

    private static List<String> concat(List<String> columns, String more) {
        return Stream.concat(columns.stream(), Stream.of(more)).toList();
    }

    static FleetUnit read(Row row, Optional<FleetUnit> known) {
        FleetUnit before = known.orElseGet(() -> FleetUnit.of(new Unit("", "", "", Plate.UNREAD, AirDelivery.UNKNOWN,
                Optional.empty(), Altitude.SEA_LEVEL)));
        String id = row.words("unit_id");
        Unit unit = new Unit(id, or(row, "label", before.unit().label().isEmpty() ? id : before.unit().label()),
                or(row, "site", before.unit().site()), plate(row, before.unit().plate()), delivery(row, before.unit().delivery()),
                row.day("installed_on").or(before.unit()::installedOn), altitude(row).orElse(before.unit().altitude()));
        return new FleetUnit(unit, or(row, "make", before.make()), or(row, "model", before.model()), or(row, "serial", before.serial()),
                or(row, "vehicle", before.vehicle()), or(row, "position", before.roofPosition()), or(row, "owner", before.owner()),
                row.day("warranty_until").or(before::warrantyUntil), duty(row, before.duty()));
    }

    static boolean lacksAltitude(Row row) {
        return row.text("altitude_ft").isEmpty() && row.text("altitude_m").isEmpty();
    }

    private static String or(Row row, String column, String before) {
        String text = row.words(column);
        return text.isEmpty() ? before : text;
    }

    private static Optional<Altitude> altitude(Row row) {
        return row.quantity("altitude_ft", Altitude::feet).or(() -> row.quantity("altitude_m", Altitude::new));
    }

    private static AirDelivery delivery(Row row, AirDelivery before) {
        return row.yesOrNo("ducted").map(ducted -> ducted ? AirDelivery.DUCTED : AirDelivery.NON_DUCTED).orElse(before);
    }

    private static FleetUnit.Duty duty(Row row, FleetUnit.Duty before) {
        return row.text("duty").isEmpty() ? before : row.choice("duty", FleetUnit.Duty.class, null);
    }

    private static Plate plate(Row row, Plate before) {
        AmpsKind kind = row.choice("rated_amps_kind", AmpsKind.class, AmpsKind.UNKNOWN);
        String refrigerant = row.words("refrigerant");
        return new Plate(row.quantity("nominal_btuh", CoolingCapacity::btuPerHour).or(before::nominal),
                refrigerant.isEmpty() ? before.refrigerant() : Optional.of(refrigerant),
                row.quantity("rated_amps", Current::new).or(before::ratedAmps), kind == AmpsKind.UNKNOWN ? before.ratedAmpsKind() : kind,
                row.quantity("rated_volts", Voltage::new).or(before::ratedVolts),
                row.yesOrNo("variable_speed").orElse(before.variableSpeed()), row.yesOrNo("soft_starter").orElse(before.softStarter()),
                row.quantity("capacitor_label_uf", Capacitance::new).or(before::capacitorLabel));
    }

    /** The cells of a unit, in the order of {@link #WRITTEN}. */
    static List<String> cells(FleetUnit fleetUnit) {
        Unit unit = fleetUnit.unit();
        Plate plate = unit.plate();
        return List.of(Cell.escaped(unit.id()), Cell.escaped(unit.label()), Cell.escaped(unit.site()),
                plate.nominal().map(nominal -> Shortest.text(nominal.btuPerHour(), nominal, CoolingCapacity::btuPerHour)).orElse(""),
                Cell.escaped(plate.refrigerant().orElse("")), plate.ratedAmps().map(amps -> Shortest.text(amps.amperes())).orElse(""),
                plate.ratedVolts().map(volts -> Shortest.text(volts.volts())).orElse(""), ducted(unit.delivery()),
                day(unit.installedOn()), Shortest.text(unit.altitude().feet(), unit.altitude(), Altitude::feet),
                plate.ratedAmpsKind() == AmpsKind.UNKNOWN ? "" : Row.word(plate.ratedAmpsKind()), Cell.escaped(fleetUnit.serial()),
                Cell.escaped(fleetUnit.vehicle()), Cell.escaped(fleetUnit.roofPosition()),
                plate.capacitorLabel().map(label -> Shortest.text(label.microfarads())).orElse(""), yes(plate.softStarter()),
                yes(plate.variableSpeed()), Cell.escaped(fleetUnit.make()), Cell.escaped(fleetUnit.model()),
                Cell.escaped(fleetUnit.owner()), day(fleetUnit.warrantyUntil()),
                fleetUnit.duty() == FleetUnit.Duty.IN_SERVICE ? "" : Row.word(fleetUnit.duty()));
    }

    private static String ducted(AirDelivery delivery) {
        return switch (delivery) {
            case DUCTED -> "yes";
            case NON_DUCTED -> "no";
            case UNKNOWN -> "";
        };
    }

    private static String yes(boolean fitted) {
        return fitted ? "yes" : "";
    }

    private static String day(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("");
    }
}
