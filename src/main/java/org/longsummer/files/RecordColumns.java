package org.longsummer.files;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.quantity.Voltage;
import org.longsummer.store.Correction;
import org.longsummer.store.Entry;
import org.longsummer.store.RecordedVisit;
import org.longsummer.store.Withdrawal;

/**
 * What a {@code visits.csv} of our own says of a visit besides what was read: how it was typed, by which instruments it was read, who
 * saved it when, what it corrects, who withdrew it. Files of others leave these columns out.
 */
final class RecordColumns {
    /** A file with this column is one of ours: numbers stand in it as they were typed. */
    static final String MARK = "typed_system";
    static final List<String> ALL = List.of(MARK, "volts_off", "one_probe", "probe_u_f", "ambient_probe_u_f", "humidity_u_pct", "clamp_u_pct",
            "clamp_floor_u_a", "voltage_u_v", "saved_by", "received_at", "corrects", "correction_reason", "withdrawn_by", "withdrawn_at",
            "withdrawal_reason");

    private RecordColumns() {}

    /** Standard uncertainties; what a cell leaves open is the usual one. */
    static Instruments instruments(Row row) {
        Instruments usual = Instruments.DEFAULT;
        return new Instruments(row.quantity("probe_u_f", TemperatureDifference::fahrenheit).orElse(usual.probe()),
                row.quantity("ambient_probe_u_f", TemperatureDifference::fahrenheit).orElse(usual.ambientProbe()),
                row.quantity("humidity_u_pct", RelativeHumidity::percent).orElse(usual.humidity()),
                row.quantity("clamp_u_pct", percent -> percent / 100).orElse(usual.clampRelative()),
                row.quantity("clamp_floor_u_a", Current::new).orElse(usual.clampFloor()),
                row.quantity("voltage_u_v", Voltage::new).orElse(usual.voltage()), row.yesOrNo("one_probe").orElse(false));
    }

    /** In which system it was typed; where the file does not say, the boxes tell. */
    static UnitSystem system(Row row, boolean anyCelsius) {
        return switch (row.text(MARK)) {
            case "us" -> UnitSystem.US;
            case "si" -> UnitSystem.SI;
            default -> anyCelsius ? UnitSystem.SI : UnitSystem.US;
        };
    }

    static Optional<Correction> correction(Row row) {
        String corrects = row.words("corrects");
        return corrects.isEmpty() ? Optional.empty() : Optional.of(new Correction(corrects, row.words("correction_reason")));
    }

    static String savedBy(Row row, String whenEmpty) {
        String by = row.words("saved_by");
        return by.isEmpty() ? whenEmpty : by;
    }

    static Optional<Instant> receivedAt(Row row) {
        return row.optionalMoment("received_at").map(OffsetDateTime::toInstant);
    }

    static Optional<Withdrawal> withdrawal(Row row) {
        String by = row.words("withdrawn_by");
        return row.optionalMoment("withdrawn_at").map(at -> new Withdrawal(by, at.toInstant(), row.words("withdrawal_reason")));
    }

    /** The cells of a visit alone. */
    static Map<String, String> cells(Entry entry) {
        Map<String, String> cells = new LinkedHashMap<>();
        Instruments u = entry.visit().instruments();
        Instruments usual = Instruments.DEFAULT;
        cells.put(MARK, entry.typed().system() == UnitSystem.US ? "us" : "si");
        cells.put("one_probe", u.oneProbe() ? "yes" : "");
        cells.put("probe_u_f", u.probe().equals(usual.probe()) ? ""
                : Shortest.text(u.probe().fahrenheit(), u.probe(), TemperatureDifference::fahrenheit));
        cells.put("ambient_probe_u_f", u.ambientProbe().equals(usual.ambientProbe()) ? ""
                : Shortest.text(u.ambientProbe().fahrenheit(), u.ambientProbe(), TemperatureDifference::fahrenheit));
        cells.put("humidity_u_pct", u.humidity().equals(usual.humidity()) ? ""
                : Shortest.text(u.humidity().percent(), u.humidity(), RelativeHumidity::percent));
        cells.put("clamp_u_pct", u.clampRelative() == usual.clampRelative() ? ""
                : Shortest.text(100 * u.clampRelative(), u.clampRelative(), percent -> percent / 100));
        cells.put("clamp_floor_u_a", u.clampFloor().equals(usual.clampFloor()) ? "" : Shortest.text(u.clampFloor().amperes()));
        cells.put("voltage_u_v", u.voltage().equals(usual.voltage()) ? "" : Shortest.text(u.voltage().volts()));
        cells.put("saved_by", Cell.escaped(entry.savedBy()));
        return cells;
    }

    /** The cells of a row of the record: when it was received, what it corrects, and whether it was withdrawn. */
    static Map<String, String> cells(RecordedVisit row) {
        Map<String, String> cells = cells(row.entry());
        cells.put("received_at", row.receivedAt().toString());
        row.entry().correction().ifPresent(correction -> {
            cells.put("corrects", Cell.escaped(correction.correctsId()));
            cells.put("correction_reason", Cell.escaped(correction.reason()));
        });
        row.withdrawal().ifPresent(withdrawal -> {
            cells.put("withdrawn_by", Cell.escaped(withdrawal.by()));
            cells.put("withdrawn_at", withdrawal.at().toString());
            cells.put("withdrawal_reason", Cell.escaped(withdrawal.reason()));
        });
        return cells;
    }
}
