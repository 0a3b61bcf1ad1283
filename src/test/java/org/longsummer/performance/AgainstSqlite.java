package org.longsummer.performance;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
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
    private final List<Double> sqlite = new ArrayList<>();
    private final List<Double> assess = new ArrayList<>();
    private final List<Double> take = new ArrayList<>();

    private AgainstSqlite(Path directory, int visits) {
        this.directory = directory;
        this.visits = visits;
    }

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
        sqlite.add(seconds("sqlite3", directory.resolve("bare.sqlite").toString(), ".mode csv", ".import " + visitsFile() + " visits"));
        assess.add(seconds(longsummer("-Xmx512m", "-XX:+UseParallelGC", "assess", "--units", unitsFile(), "--visits", visitsFile(), "--out",
                directory.resolve("verdicts.csv").toString())));
        take.add(seconds(longsummer("-Xmx512m", "-XX:+UseParallelGC", "import", "--units", unitsFile(), "--visits", visitsFile(), "--data",
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

    private static double seconds(String... command) throws Exception {
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        if (process.waitFor() != 0) {
            throw new IOException("failed: " + String.join(" ", command));
        }
        return (System.nanoTime() - start) / 1e9;
    }

    private void print(int units, int visitsAUnit) {
        System.out.printf(Locale.ROOT, "%d units of %d visits, %d rounds, medians%n", units, visitsAUnit, sqlite.size());
        System.out.printf(Locale.ROOT, "sqlite3 .import %.2f s%n", median(sqlite));
        System.out.printf(Locale.ROOT, "assess %.2f s, %.1f times, %.1f us a visit%n", median(assess), ratio(assess), 1e6 * median(assess) / visits);
        System.out.printf(Locale.ROOT, "import %.2f s, %.1f times, %.1f us a visit%n", median(take), ratio(take), 1e6 * median(take) / visits);
    }

    /** Median of the rounds' ratios. */
    private double ratio(List<Double> seconds) {
        List<Double> ratios = new ArrayList<>();
        for (int i = 0; i < seconds.size(); i++) {
            ratios.add(seconds.get(i) / sqlite.get(i));
        }
        return median(ratios);
    }

    private static double median(List<Double> numbers) {
        double[] sorted = numbers.stream().mapToDouble(number -> number).toArray();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static void delete(Path directory) throws IOException {
        try (Stream<Path> all = Files.walk(directory)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
