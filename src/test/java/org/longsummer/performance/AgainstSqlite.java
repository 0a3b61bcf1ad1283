package org.longsummer.performance;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.longsummer.demo.LargeFleet;

/**
 * Assessing a file, and importing it into a record with everything judged, against {@code sqlite3} importing the same file into a bare
 * table; by turns in one run, so that a busy machine is busy for all of them.
 *
 * <p>Arguments: {@code UNITS VISITS-A-UNIT [ROUNDS]}. Needs the {@code sqlite3} command. Start it with
 * {@code java -cp target/longsummer.jar:target/test-classes org.longsummer.performance.AgainstSqlite 10000 10}.
 */
public final class AgainstSqlite {
    private final Path directory;
    private final int visits;
    private final List<Spent> sqlite = new ArrayList<>();
    private final List<Spent> assess = new ArrayList<>();
    private final List<Spent> take = new ArrayList<>();

    private AgainstSqlite(Path directory, int visits) {
        this.directory = directory;
        this.visits = visits;
    }

    /** Seconds by the clock on the wall, and of processors, which others' work on the machine changes less. */
    private record Spent(double wall, double processors) {}

    public static void main(String[] arguments) throws Exception {
        int units = Integer.parseInt(arguments[0]);
        int visitsAUnit = Integer.parseInt(arguments[1]);
        int rounds = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 3;
        Path directory = Files.createTempDirectory("longsummer-performance");
        try {
            LargeFleet.write(directory, units, visitsAUnit);
            AgainstSqlite comparison = new AgainstSqlite(directory, units * visitsAUnit);
            for (int round = 0; round < rounds; round++) {
                comparison.round();
            }
            comparison.print(units, visitsAUnit);
        } finally {
            delete(directory);
        }
    }

    private void round() throws Exception {
        sqlite.add(spent("sqlite3", directory.resolve("bare.sqlite").toString(), ".mode csv", ".import " + visitsFile() + " visits"));
        assess.add(spent(longsummer("-Xmx512m", "-XX:+UseParallelGC", "assess", "--units", unitsFile(), "--visits", visitsFile(), "--out",
                directory.resolve("verdicts.csv").toString())));
        take.add(spent(longsummer("-Xmx512m", "-XX:+UseParallelGC", "import", "--units", unitsFile(), "--visits", visitsFile(), "--data",
                directory.resolve("record").toString())));
        Files.delete(directory.resolve("bare.sqlite"));
        delete(directory.resolve("record"));
    }

    private String unitsFile() {
        return directory.resolve("units.csv").toString();
    }

    private String visitsFile() {
        return directory.resolve("visits.csv").toString();
    }

    /** Options of the machine first, then the command. */
    private static String[] longsummer(String... words) {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        Stream.of(words).filter(word -> word.startsWith("-X")).forEach(command::add);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), "org.longsummer.Longsummer"));
        Stream.of(words).filter(word -> !word.startsWith("-X")).forEach(command::add);
        return command.toArray(String[]::new);
    }

    private static Spent spent(String... command) throws Exception {
        List<String> timed = new ArrayList<>(List.of("bash", "-c", "TIMEFORMAT='%R %U %S'; time \"$@\" > /dev/null 2> /dev/null", "bash"));
        timed.addAll(List.of(command));
        Process process = new ProcessBuilder(timed).start();
        String said = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        if (process.waitFor() != 0) {
            throw new IOException("failed: " + String.join(" ", command));
        }
        double[] seconds = Arrays.stream(said.split(" ")).mapToDouble(Double::parseDouble).toArray();
        return new Spent(seconds[0], seconds[1] + seconds[2]);
    }

    private void print(int units, int visitsAUnit) {
        System.out.printf(Locale.ROOT, "%d units of %d visits, %d rounds, medians, on %d processors%n", units, visitsAUnit, sqlite.size(),
                Runtime.getRuntime().availableProcessors());
        System.out.printf(Locale.ROOT, "sqlite3 .import %.2f s, %.2f s of a processor%n", median(sqlite, Spent::wall), median(sqlite, Spent::processors));
        print("assess", assess);
        print("import", take);
    }

    private void print(String what, List<Spent> spent) {
        System.out.printf(Locale.ROOT, "%s %.2f s, %.1f times; %.2f s of a processor, %.1f times, %.1f us a visit%n", what, median(spent, Spent::wall),
                ratio(spent, Spent::wall), median(spent, Spent::processors), ratio(spent, Spent::processors),
                1e6 * median(spent, Spent::processors) / visits);
    }

    private static double median(List<Spent> rounds, ToDoubleFunction<Spent> seconds) {
        return median(rounds.stream().map(seconds::applyAsDouble).toList());
    }

    /** Median of the rounds' ratios. */
    private double ratio(List<Spent> rounds, ToDoubleFunction<Spent> seconds) {
        List<Double> ratios = new ArrayList<>();
        for (int i = 0; i < rounds.size(); i++) {
            ratios.add(seconds.applyAsDouble(rounds.get(i)) / seconds.applyAsDouble(sqlite.get(i)));
        }
        return median(ratios);
    }

    private static double median(List<Double> numbers) {
        double[] sorted = numbers.stream().mapToDouble(number -> number).toArray();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    static void delete(Path directory) throws IOException {
        try (Stream<Path> all = Files.walk(directory)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
