package org.longsummer.files;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoField;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Reading;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.SupplyAt;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.store.Entry;
import org.longsummer.store.RecordedVisit;
import org.longsummer.store.Typed;

/** The columns of a {@code visits.csv}; the boxes of a form have the same names. */
final class VisitColumns {
    private static final List<String> OTHERS = List.of("visit_id", "unit_id", "visited_at", "technician", "supply_at", "ambient_at",
            "fan_speed", "power_source", "filter_condition", "coil_condition", "work_done", "iced_coil", "notes");
    private static final List<String> KEPT = Stream.concat(Reading.NAMES.stream(), Stream.of("volts_off")).toList();
    static final Layout LAYOUT = new Layout(Stream.of(OTHERS, Reading.NAMES, RecordColumns.ALL).flatMap(List::stream).toList(),
            List.of(List.of("unit_id"), List.of("visited_at"), List.of("return_db_f", "return_db_c"),
                    List.of("supply_db_f", "supply_db_c")));

    private static final DateTimeFormatter MOMENT = new DateTimeFormatterBuilder().appendPattern("uuuu-MM-dd'T'HH:mm:ss")
            .appendFraction(ChronoField.NANO_OF_SECOND, 0, 3, true).appendOffset("+HH:MM:ss", "+00:00").toFormatter(Locale.ROOT);

    private VisitColumns() {}

    /**
     * Reads a visit from the texts of a row.
     *
     * @param visitId its id
     * @return empty when something could not be read; the row's findings say what
     */
    static Optional<Visit> read(Row row, String visitId) {
        if (!row.text(RecordColumns.MARK).isEmpty()) {
            row.readsNumbersAsTyped();
        }
        String unitId = row.required("unit_id", "name the unit; a visit without one cannot be kept");
        Instruments instruments = RecordColumns.instruments(row);
        Optional<OffsetDateTime> moment = row.moment("visited_at");
        Readings readings = readings(row);
        String notes = row.words("notes");
        FanSpeed fanSpeed = row.choice("fan_speed", FanSpeed.class, FanSpeed.UNKNOWN);
        PowerSource powerSource = row.choice("power_source", PowerSource.class, PowerSource.UNKNOWN);
        FilterLook filter = row.choice("filter_condition", FilterLook.class, FilterLook.NOT_LOOKED);
        CoilLook coil = row.choice("coil_condition", CoilLook.class, CoilLook.NOT_LOOKED);
        boolean icedCoil = row.yesOrNo("iced_coil").orElse(Ice.isMentioned(notes));
        Set<Work> work = work(row);
        return moment.filter(present -> row.isSound()).map(at -> new Visit(visitId, unitId, at.toInstant(), at.getOffset(),
                row.words("technician"), instruments, readings, fanSpeed, powerSource, filter, coil, icedCoil, work, notes));
    }

    /** The typed texts of a row's readings. */
    static Typed typed(Row row) {
        Map<String, String> texts = new LinkedHashMap<>();
        boolean celsius = false;
        for (String box : KEPT) {
            String text = row.text(box);
            if (!text.isEmpty()) {
                texts.put(box, text);
                celsius |= box.endsWith("_c");
            }
        }
        return new Typed(RecordColumns.system(row, celsius), texts);
    }

    /** The cells of a visit, in the order of the layout; what was typed stands as it was typed. */
    static List<String> cells(Entry entry) {
        return cells(entry, RecordColumns.cells(entry));
    }

    /** The same of a row of the record, with its marking. */
    static List<String> cells(RecordedVisit row) {
        return cells(row.entry(), RecordColumns.cells(row));
    }

    private static List<String> cells(Entry entry, Map<String, String> besides) {
        Map<String, String> cells = new LinkedHashMap<>(entry.typed().texts());
        cells.putAll(besides);
        Visit visit = entry.visit();
        if (cells.keySet().stream().noneMatch(Reading.NAMES::contains)) {
            cells.putAll(ReadingCells.of(visit.readings()));
        }
        cells.put("visit_id", Cell.escaped(visit.id()));
        cells.put("unit_id", Cell.escaped(visit.unitId()));
        cells.put("visited_at", MOMENT.format(visit.at().atOffset(visit.offset())));
        cells.put("technician", Cell.escaped(visit.technician()));
        cells.put("supply_at", word(visit.readings().supplyAt(), SupplyAt.UNKNOWN));
        cells.put("ambient_at", word(visit.readings().ambientAt(), AmbientAt.UNKNOWN));
        cells.put("fan_speed", word(visit.fanSpeed(), FanSpeed.UNKNOWN));
        cells.put("power_source", word(visit.powerSource(), PowerSource.UNKNOWN));
        cells.put("filter_condition", word(visit.filter(), FilterLook.NOT_LOOKED));
        cells.put("coil_condition", word(visit.coil(), CoilLook.NOT_LOOKED));
        cells.put("work_done", workWords(visit.workDone()));
        cells.put("iced_coil", visit.icedCoil() ? "yes" : Ice.isMentioned(visit.notes()) ? "no" : "");
        cells.put("notes", Cell.escaped(visit.notes()));
        return LAYOUT.known().stream().map(column -> cells.getOrDefault(column, "")).toList();
    }

    private static String word(Enum<?> value, Enum<?> whenEmpty) {
        return value == whenEmpty ? "" : Row.word(value);
    }

    private static Readings readings(Row row) {
        ReadingsBuilder builder = new ReadingsBuilder().supplyAt(row.choice("supply_at", SupplyAt.class, SupplyAt.UNKNOWN))
                .ambientAt(row.choice("ambient_at", AmbientAt.class, AmbientAt.UNKNOWN));
        for (Reading<?> reading : Reading.ALL) {
            if (reading.isTemperature()) {
                row.temperature(reading.name()).ifPresent(temperature -> reading.takeRecorded(builder, temperature.kelvins()));
            } else {
                row.quantity(reading.name(), number -> number).ifPresent(number -> reading.takeWritten(builder, number));
            }
        }
        return builder.build();
    }

    /** Work in the words of the files, joined by {@code +}; {@code none} for none. */
    static String workWords(Collection<Work> work) {
        return work.isEmpty() ? "none" : work.stream().sorted().map(Row::word).collect(Collectors.joining("+"));
    }

    private static Set<Work> work(Row row) {
        String text = row.text("work_done").toLowerCase(Locale.ROOT);
        if (text.isEmpty() || text.equals("none")) {
            return Set.of();
        }
        Set<Work> work = EnumSet.noneOf(Work.class);
        for (String word : text.split("\\s*\\+\\s*", -1)) {
            switch (word) {
                case "none" -> { }
                case "both_coils" -> work.addAll(List.of(Work.EVAPORATOR_COIL, Work.CONDENSER_COIL));
                default -> Arrays.stream(Work.values()).filter(value -> Row.word(value).equals(word)).findFirst()
                        .ifPresentOrElse(work::add, () -> row.problem("work_done", row.text("work_done"), "write none, both_coils, "
                                + Arrays.stream(Work.values()).map(Row::word).collect(Collectors.joining(", "))
                                + ", or several of them joined by +"));
            }
        }
        return Set.copyOf(work);
    }
}
