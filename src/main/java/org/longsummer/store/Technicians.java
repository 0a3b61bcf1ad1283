package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.StatementContext;
import org.longsummer.access.Reach;
import org.longsummer.chain.visit.InstrumentKind;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.Voltage;

/** Who reads with what. A visit keeps the uncertainties that held when it was saved; a change here touches later visits only. */
public final class Technicians {
    private static final String COLUMNS = """
            name, thermometer_kind, ambient_thermometer_kind, hygrometer_kind, clamp_kind, voltmeter_kind, probe_u_k, ambient_probe_u_k, \
            humidity_u, clamp_relative_u, clamp_floor_u_a, voltage_u_v""";

    private final Jdbi reader;
    private final Jdbi writer;

    Technicians(Jdbi reader, Jdbi writer) {
        this.reader = reader;
        this.writer = writer;
    }

    /** All whose instruments are known, by name. */
    public List<Toolkit> all() {
        return reader.withHandle(handle -> handle.createQuery("select " + COLUMNS + " from technician order by name")
                .map(Technicians::read).list());
    }

    public Optional<Toolkit> named(String name) {
        return reader.withHandle(handle -> named(handle, name));
    }

    static Optional<Toolkit> named(Handle handle, String name) {
        return handle.createQuery("select " + COLUMNS + " from technician where name = :name").bind("name", name).map(Technicians::read).findOne();
    }

    /** The uncertainties of a technician's instruments; the defaults where nobody said which they are. */
    public Instruments instrumentsOf(String name) {
        return named(name).map(Toolkit::instruments).orElse(Instruments.DEFAULT);
    }

    /** Names in visits that somebody may see, most frequent first, at most so many. */
    public List<String> namesInVisits(Reach reach, int most) {
        ReachCondition seen = new ReachCondition(reach);
        return reader.withHandle(handle -> handle
                .createQuery("select technician from visit join unit on unit.id = visit.unit_id where technician <> '' and "
                        + seen.on("unit.depot") + " group by technician order by count(*) desc, technician limit :most")
                .bindMap(seen.values()).bind("most", most).mapTo(String.class).list());
    }

    public void save(Toolkit toolkit) {
        writer.useTransaction(handle -> save(handle, toolkit));
    }

    static void save(Handle handle, Toolkit toolkit) {
        Instruments u = toolkit.instruments();
        handle.createUpdate("insert or replace into technician (" + COLUMNS + """
                ) values (:name, :thermometer, :ambient, :hygrometer, :clamp, :voltmeter, :probe_u, :ambient_u, :humidity_u, :relative,
                :floor, :voltage)""")
                .bind("name", toolkit.technician()).bind("thermometer", Column.word(toolkit.thermometer(), null))
                .bind("ambient", Column.word(toolkit.ambientThermometer(), null))
                .bind("hygrometer", Column.word(toolkit.hygrometer(), null)).bind("clamp", Column.word(toolkit.clamp(), null))
                .bind("voltmeter", Column.word(toolkit.voltmeter(), null)).bind("probe_u", u.probe().kelvins())
                .bind("ambient_u", u.ambientProbe().kelvins()).bind("humidity_u", u.humidity().fraction())
                .bind("relative", u.clampRelative()).bind("floor", u.clampFloor().amperes()).bind("voltage", u.voltage().volts())
                .execute();
    }

    private static Toolkit read(ResultSet row, StatementContext context) throws SQLException {
        return new Toolkit(row.getString("name"), kind(row, "thermometer_kind"), kind(row, "ambient_thermometer_kind"),
                kind(row, "hygrometer_kind"), kind(row, "clamp_kind"), kind(row, "voltmeter_kind"),
                new Instruments(new TemperatureDifference(row.getDouble("probe_u_k")), new TemperatureDifference(row.getDouble("ambient_probe_u_k")),
                        new RelativeHumidity(row.getDouble("humidity_u")), row.getDouble("clamp_relative_u"),
                        new Current(row.getDouble("clamp_floor_u_a")), new Voltage(row.getDouble("voltage_u_v")), false));
    }

    private static InstrumentKind kind(ResultSet row, String column) throws SQLException {
        return InstrumentKind.valueOf(row.getString(column).toUpperCase(Locale.ROOT));
    }
}
