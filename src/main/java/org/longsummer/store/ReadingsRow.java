package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import java.util.function.Function;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.SupplyAt;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.Voltage;

/** A visit's readings as columns. */
final class ReadingsRow {
    static final String COLUMNS = """
            return_dry_bulb_k, return_relative_humidity, return_wet_bulb_k, return_dew_point_k, supply_dry_bulb_k, supply_at, \
            ambient_dry_bulb_k, ambient_at, ambient_relative_humidity, amps_a, volts_v, run_time_min, condenser_entering_dry_bulb_k, \
            condenser_leaving_dry_bulb_k, room_dry_bulb_k, fan_only_amps_a, start_peak_a, capacitor_uf""";

    private ReadingsRow() {}

    static Rows bind(Rows row, Readings readings) {
        return row.bind("return_dry_bulb_k", readings.returnDryBulb().map(Temperature::kelvins))
                .bind("return_relative_humidity", moisture(readings, Moisture.Relative.class, m -> m.humidity().fraction()))
                .bind("return_wet_bulb_k", moisture(readings, Moisture.WetBulb.class, m -> m.temperature().kelvins()))
                .bind("return_dew_point_k", moisture(readings, Moisture.DewPoint.class, m -> m.temperature().kelvins()))
                .bind("supply_dry_bulb_k", readings.supplyDryBulb().map(Temperature::kelvins))
                .bind("supply_at", Column.word(readings.supplyAt(), SupplyAt.UNKNOWN))
                .bind("ambient_dry_bulb_k", readings.ambientDryBulb().map(Temperature::kelvins))
                .bind("ambient_at", Column.word(readings.ambientAt(), AmbientAt.UNKNOWN))
                .bind("ambient_relative_humidity", readings.ambientHumidity().map(RelativeHumidity::fraction))
                .bind("amps_a", readings.amps().map(Current::amperes))
                .bind("volts_v", readings.volts().map(Voltage::volts))
                .bind("run_time_min", readings.runTime().map(RunTime::minutes))
                .bind("condenser_entering_dry_bulb_k", readings.condenserEntering().map(Temperature::kelvins))
                .bind("condenser_leaving_dry_bulb_k", readings.condenserLeaving().map(Temperature::kelvins))
                .bind("room_dry_bulb_k", readings.roomDryBulb().map(Temperature::kelvins))
                .bind("fan_only_amps_a", readings.fanOnlyAmps().map(Current::amperes))
                .bind("start_peak_a", readings.startPeak().map(Current::amperes))
                .bind("capacitor_uf", readings.capacitor().map(Capacitance::microfarads));
    }

    private static <M extends Moisture> Optional<Double> moisture(Readings readings, Class<M> form, Function<M, Double> number) {
        return readings.returnMoisture().filter(form::isInstance).map(form::cast).map(number);
    }

    static Readings read(ResultSet row) throws SQLException {
        return new Readings(Column.quantity(row, "return_dry_bulb_k", Temperature::new), moisture(row),
                Column.quantity(row, "supply_dry_bulb_k", Temperature::new),
                Column.choice(row, "supply_at", SupplyAt.class, SupplyAt.UNKNOWN),
                Column.quantity(row, "ambient_dry_bulb_k", Temperature::new),
                Column.choice(row, "ambient_at", AmbientAt.class, AmbientAt.UNKNOWN),
                Column.quantity(row, "ambient_relative_humidity", RelativeHumidity::new),
                Column.quantity(row, "amps_a", Current::new), Column.quantity(row, "volts_v", Voltage::new),
                Column.quantity(row, "run_time_min", RunTime::new),
                Column.quantity(row, "condenser_entering_dry_bulb_k", Temperature::new),
                Column.quantity(row, "condenser_leaving_dry_bulb_k", Temperature::new),
                Column.quantity(row, "room_dry_bulb_k", Temperature::new), Column.quantity(row, "fan_only_amps_a", Current::new),
                Column.quantity(row, "start_peak_a", Current::new), Column.quantity(row, "capacitor_uf", Capacitance::new));
    }

    private static Optional<Moisture> moisture(ResultSet row) throws SQLException {
        Optional<Moisture> relative = Column.quantity(row, "return_relative_humidity",
                fraction -> new Moisture.Relative(new RelativeHumidity(fraction)));
        Optional<Moisture> wetBulb = Column.quantity(row, "return_wet_bulb_k", k -> new Moisture.WetBulb(new Temperature(k)));
        Optional<Moisture> dewPoint = Column.quantity(row, "return_dew_point_k", k -> new Moisture.DewPoint(new Temperature(k)));
        return relative.or(() -> wetBulb).or(() -> dewPoint);
    }
}
