package org.longsummer.files;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ObjLongConsumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.longsummer.chain.season.Climate;
import org.longsummer.quantity.Altitude;
import org.longsummer.store.Depot;

/** A {@code depots.csv}: the places where vehicles stand, with their altitude, time zone and running hours. */
final class DepotsFile {
    static final String NAME = "depots.csv";
    private static final List<String> HOURS = IntStream.rangeClosed(1, 12).mapToObj(month -> "run_hours_" + month).toList();
    private static final List<String> COLUMNS = Stream.concat(Stream.of("site", "altitude_m", "time_zone", "season_opens", "season_closes"),
            HOURS.stream()).toList();
    static final Layout LAYOUT = new Layout(COLUMNS, List.of(List.of("site")));

    private DepotsFile() {}

    static void write(Path file, List<Depot> depots) throws IOException {
        try (RecordWriter writer = new RecordWriter(file, COLUMNS)) {
            depots.forEach(depot -> writer.row(cells(depot)));
        }
    }

    /** The cells of a depot, in the order of the layout. */
    static List<String> cells(Depot depot) {
        List<String> cells = new ArrayList<>(List.of(Cell.escaped(depot.name()), depot.altitude().map(altitude -> Shortest.text(altitude.metres()))
                .orElse(""), depot.timeZone().map(ZoneId::getId).orElse("")));
        cells.add(depot.climate().map(climate -> day(climate.opens())).orElse(""));
        cells.add(depot.climate().map(climate -> day(climate.closes())).orElse(""));
        for (int month = 0; month < HOURS.size(); month++) {
            int index = month;
            cells.add(depot.climate().map(climate -> Shortest.text(climate.runHoursPerDay().get(index))).orElse(""));
        }
        return cells;
    }

    private static String day(MonthDay day) {
        return day.toString().substring(2);
    }

    static void read(Path file, Findings findings, Consumer<Depot> depots) throws IOException {
        read(file, name -> Optional.empty(), findings, (depot, row) -> depots.accept(depot));
    }

    /**
     * Reads depots with the rows in which they stand. What a cell leaves open is taken from the depot as it is known already.
     *
     * @throws IOException when the file cannot be read
     */
    static void read(Path file, Function<String, Optional<Depot>> known, Findings findings, ObjLongConsumer<Depot> depots) throws IOException {
        Map<String, Long> rows = new HashMap<>();
        Sheet.read(file, LAYOUT, findings, row -> {
            String name = row.required("site", "name the depot");
            Long earlier = name.isEmpty() ? null : rows.putIfAbsent(name, row.number());
            if (earlier != null) {
                row.problem("site", name, "row " + earlier + " has the same depot; keep one of the rows");
            }
            Optional<Depot> before = known.apply(name);
            Optional<Altitude> altitude = row.quantity("altitude_m", Altitude::new).or(() -> before.flatMap(Depot::altitude));
            Optional<ZoneId> zone = zone(row).or(() -> before.flatMap(Depot::timeZone));
            Optional<Climate> climate = climate(row).or(() -> before.flatMap(Depot::climate));
            if (row.isSound()) {
                depots.accept(new Depot(name, altitude, zone, climate), row.number());
            }
        });
    }

    private static Optional<ZoneId> zone(Row row) {
        String text = row.text("time_zone");
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(ZoneId.of(text));
        } catch (DateTimeException e) {
            row.problem("time_zone", text, "write the name of a time zone such as America/Denver, or leave it empty");
            return Optional.empty();
        }
    }

    private static Optional<Climate> climate(Row row) {
        if (row.text("season_opens").isEmpty()) {
            return Optional.empty();
        }
        List<Double> hours = HOURS.stream().map(column -> row.quantity(column, Double::valueOf).orElse(0.0)).toList();
        try {
            return Optional.of(new Climate(hours, MonthDay.parse("--" + row.text("season_opens")), MonthDay.parse("--" + row.text("season_closes"))));
        } catch (DateTimeException e) {
            row.problem("season_opens", row.text("season_opens"), "write first and last day of the season as month-day, such as 04-01");
        } catch (IllegalArgumentException e) {
            row.problem(HOURS.get(0), row.text(HOURS.get(0)), e.getMessage());
        }
        return Optional.empty();
    }
}
