package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.jdbi.v3.core.statement.StatementContext;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.Unit;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Voltage;

/** A unit as a row. */
final class UnitRow {
    private static final String OWN = """
            id, label, depot, nominal_capacity_w, refrigerant, rated_amps_a, rated_amps_kind, rated_volts_v, variable_speed, \
            soft_starter, capacitor_label_uf, air_delivery, installed_on, altitude_m, make, model, serial, vehicle, roof_position, \
            owner, warranty_until, duty""";
    /** Of the table {@code unit}. */
    static final String COLUMNS = OWN + ", (select d.climate from depot d where d.name = unit.depot) as climate";
    private static final String WRITTEN = OWN + ", serial_key";
    static final String UPSERT = "insert into unit (" + WRITTEN + ") values (" + names(WRITTEN, ":%1$s") + ") "
            + "on conflict (id) do update set " + names(WRITTEN.substring("id, ".length()), "%1$s = excluded.%1$s");

    private UnitRow() {}

    private static String names(String columns, String format) {
        return Arrays.stream(columns.split(", ")).map(format::formatted).collect(Collectors.joining(", "));
    }

    static Rows bind(Rows row, FleetUnit fleetUnit) {
        Unit unit = fleetUnit.unit();
        Plate plate = unit.plate();
        return row.bind("id", unit.id()).bind("label", unit.label()).bind("depot", unit.site().isEmpty() ? null : unit.site())
                .bind("nominal_capacity_w", plate.nominal().map(CoolingCapacity::watts))
                .bind("refrigerant", plate.refrigerant())
                .bind("rated_amps_a", plate.ratedAmps().map(Current::amperes))
                .bind("rated_amps_kind", Column.word(plate.ratedAmpsKind(), AmpsKind.UNKNOWN))
                .bind("rated_volts_v", plate.ratedVolts().map(Voltage::volts))
                .bind("variable_speed", plate.variableSpeed() ? 1 : 0)
                .bind("soft_starter", plate.softStarter() ? 1 : 0)
                .bind("capacitor_label_uf", plate.capacitorLabel().map(Capacitance::microfarads))
                .bind("air_delivery", Column.word(unit.delivery(), AirDelivery.UNKNOWN))
                .bind("installed_on", unit.installedOn().map(LocalDate::toString))
                .bind("altitude_m", unit.altitude().metres())
                .bind("make", fleetUnit.make()).bind("model", fleetUnit.model())
                .bind("serial", fleetUnit.serial()).bind("serial_key", FleetUnit.serialKey(fleetUnit.serial()))
                .bind("vehicle", fleetUnit.vehicle()).bind("roof_position", fleetUnit.roofPosition())
                .bind("owner", fleetUnit.owner())
                .bind("warranty_until", fleetUnit.warrantyUntil().map(LocalDate::toString))
                .bind("duty", Column.word(fleetUnit.duty(), null));
    }

    static FleetUnit read(ResultSet row, StatementContext context) throws SQLException {
        String depot = row.getString("depot");
        Unit unit = new Unit(row.getString("id"), row.getString("label"), depot == null ? "" : depot, plate(row),
                Column.choice(row, "air_delivery", AirDelivery.class, AirDelivery.UNKNOWN), Column.day(row, "installed_on"),
                new Altitude(row.getDouble("altitude_m")), ClimateColumn.clock(Column.text(row, "climate")));
        return new FleetUnit(unit, row.getString("make"), row.getString("model"), row.getString("serial"), row.getString("vehicle"),
                row.getString("roof_position"), row.getString("owner"), Column.day(row, "warranty_until"),
                Column.choice(row, "duty", FleetUnit.Duty.class, null));
    }

    private static Plate plate(ResultSet row) throws SQLException {
        return new Plate(Column.quantity(row, "nominal_capacity_w", CoolingCapacity::new), Column.text(row, "refrigerant"),
                Column.quantity(row, "rated_amps_a", Current::new),
                Column.choice(row, "rated_amps_kind", AmpsKind.class, AmpsKind.UNKNOWN),
                Column.quantity(row, "rated_volts_v", Voltage::new), row.getInt("variable_speed") == 1, row.getInt("soft_starter") == 1,
                Column.quantity(row, "capacitor_label_uf", Capacitance::new));
    }
}
