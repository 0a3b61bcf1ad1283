package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.quantity.Voltage;

/** A visit as a row, without its readings. */
final class VisitRow {
    private static final String OWN = """
            id, unit_id, visited_at_ms, utc_offset_s, technician, instruments_id, fan_speed, power_source, filter_look, coil_look, \
            iced_coil, work_done, notes""";
    private static final String RECORD = "typed_system, typed_readings, received_at_ms, day, closes_on, generation, saved_by, corrects_id, correction_reason";
    private static final String WRITTEN = OWN + ", " + ReadingsRow.COLUMNS + ", " + RECORD;

    static final String INSTRUMENTS = "instruments_id";
    static final String INSERT = "insert into visit (" + WRITTEN + ") values (" + prefixed(WRITTEN, ":") + ")";
    /** What the chain needs; from {@code visit v}. */
    static final String JUDGED_COLUMNS = prefixed(OWN + ", " + ReadingsRow.COLUMNS, "v.");
    /** All of the record; also needs the marking's joins. */
    static final String RECORD_COLUMNS = JUDGED_COLUMNS + ", " + prefixed(RECORD, "v.");

    /** Few sets, each named by thousands of visits. */
    private final Map<Long, Instruments> instruments = new HashMap<>();
    private final Handle handle;

    /** Reads rows of one query. */
    VisitRow(Handle handle) {
        this.handle = handle;
    }

    private static String prefixed(String columns, String prefix) {
        return Arrays.stream(columns.split(", ")).map(column -> prefix + column).collect(Collectors.joining(", "));
    }

    /** The values of some rows, ready but for their instruments, which stand there themselves instead of their row's id. */
    static List<Object[]> bound(PackedVisits visits, int[] rows, Receipt receipt) {
        List<Object[]> ready = new ArrayList<>(rows.length);
        Rows binding = new Rows(INSERT) {
            @Override
            void take(Object[] row) {
                ready.add(row);
            }
        };
        for (int row : rows) {
            Entry entry = visits.entry(row).toMilliseconds();
            bind(binding, entry, entry.visit().instruments(), receipt).add();
        }
        return ready;
    }

    /** @param instruments the id of their row, or what takes its place until then */
    static Rows bind(Rows row, Entry entry, Object instruments, Receipt receipt) {
        Visit visit = entry.visit();
        row.bind("id", visit.id()).bind("unit_id", visit.unitId()).bind("visited_at_ms", visit.at().toEpochMilli())
                .bind("utc_offset_s", visit.offset().getTotalSeconds()).bind("technician", visit.technician())
                .bind(INSTRUMENTS, instruments)
                .bind("fan_speed", Column.word(visit.fanSpeed(), FanSpeed.UNKNOWN))
                .bind("power_source", Column.word(visit.powerSource(), PowerSource.UNKNOWN))
                .bind("filter_look", Column.word(visit.filter(), FilterLook.NOT_LOOKED))
                .bind("coil_look", Column.word(visit.coil(), CoilLook.NOT_LOOKED))
                .bind("iced_coil", visit.icedCoil() ? 1 : 0).bind("work_done", words(visit.workDone())).bind("notes", visit.notes())
                .bind("typed_system", Column.word(entry.typed().system(), null)).bind("typed_readings", entry.typed().lines())
                .bind("received_at_ms", receipt.at().toEpochMilli()).bind("day", visit.utcDay().toString())
                .bind("closes_on", receipt.closesOn(visit.utcDay()).toString()).bind("generation", receipt.generation())
                .bind("saved_by", entry.savedBy())
                .bind("corrects_id", entry.correction().map(Correction::correctsId))
                .bind("correction_reason", entry.correction().map(Correction::reason));
        return ReadingsRow.bind(row, visit.readings());
    }

    Visit read(ResultSet row, StatementContext context) throws SQLException {
        return new Visit(row.getString("id"), row.getString("unit_id"), Instant.ofEpochMilli(row.getLong("visited_at_ms")),
                ZoneOffset.ofTotalSeconds(row.getInt("utc_offset_s")), row.getString("technician"), instruments(row.getLong("instruments_id")),
                ReadingsRow.read(row), Column.choice(row, "fan_speed", FanSpeed.class, FanSpeed.UNKNOWN),
                Column.choice(row, "power_source", PowerSource.class, PowerSource.UNKNOWN),
                Column.choice(row, "filter_look", FilterLook.class, FilterLook.NOT_LOOKED),
                Column.choice(row, "coil_look", CoilLook.class, CoilLook.NOT_LOOKED), row.getInt("iced_coil") == 1,
                works(row.getString("work_done")), row.getString("notes"));
    }

    /** Also needs {@code corrected_by}, {@code withdrawn_by}, {@code withdrawn_at_ms} and {@code withdrawal_reason}. */
    RecordedVisit readRecord(ResultSet row, StatementContext context) throws SQLException {
        Typed typed = Typed.ofLines(Column.choice(row, "typed_system", UnitSystem.class, null), row.getString("typed_readings"));
        String corrects = row.getString("corrects_id");
        String withdrawnBy = row.getString("withdrawn_by");
        Optional<Correction> correction = corrects == null ? Optional.empty()
                : Optional.of(new Correction(corrects, row.getString("correction_reason")));
        Optional<Withdrawal> withdrawal = withdrawnBy == null ? Optional.empty() : Optional.of(new Withdrawal(withdrawnBy,
                Instant.ofEpochMilli(row.getLong("withdrawn_at_ms")), row.getString("withdrawal_reason")));
        return new RecordedVisit(new Entry(read(row, context), typed, row.getString("saved_by"), correction),
                Instant.ofEpochMilli(row.getLong("received_at_ms")), Column.text(row, "corrected_by"), withdrawal);
    }

    private Instruments instruments(long id) {
        return instruments.computeIfAbsent(id, unread -> handle.createQuery("select * from instruments where id = :id").bind("id", unread)
                .map((row, context) -> instruments(row)).one());
    }

    private static Instruments instruments(ResultSet row) throws SQLException {
        return new Instruments(new TemperatureDifference(row.getDouble("probe_u_k")),
                new TemperatureDifference(row.getDouble("ambient_probe_u_k")), new RelativeHumidity(row.getDouble("humidity_u")),
                row.getDouble("clamp_relative_u"), new Current(row.getDouble("clamp_floor_u_a")),
                new Voltage(row.getDouble("voltage_u_v")), row.getInt("one_probe") == 1);
    }

    private static String words(Set<Work> works) {
        return works.stream().sorted().map(work -> Column.word(work, null)).collect(Collectors.joining("+"));
    }

    private static Set<Work> works(String words) {
        if (words.isEmpty()) {
            return Set.of();
        }
        return Arrays.stream(words.split("\\+")).map(word -> Work.valueOf(word.toUpperCase(Locale.ROOT)))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Work.class)));
    }
}
