package org.longsummer.performance;

import io.javalin.Javalin;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.longsummer.chain.visit.Work;
import org.longsummer.demo.LargeFleet;
import org.longsummer.files.Findings;
import org.longsummer.files.Import;
import org.longsummer.files.Progress;
import org.longsummer.store.PlannedWork;
import org.longsummer.store.Store;
import org.longsummer.web.WebServer;

/**
 * Saving a visit, judged and on disk, and looking at the yard, while twenty people work: against a bare server that answers the same
 * request with one insert, or with the same bytes. By turns in one run, so that a busy machine is busy for both.
 *
 * <p>Arguments: {@code UNITS VISITS-A-UNIT [ROUNDS]}. Start it with
 * {@code java -cp target/longsummer.jar:target/test-classes org.longsummer.performance.AgainstBareServer 10000 10}.
 */
public final class AgainstBareServer {
    private static final int PEOPLE = 20;
    private static final int REQUESTS = 20;
    private static final int PLANS = 500;
    private static final List<String> LOOKS = List.of("/api/yard", "/api/yard?state=act", "/api/yard?depot=Depot+07", "/api/yard?overdue=yes",
            "/api/yard?text=wagon+77");

    private final HttpClient client = HttpClient.newHttpClient();
    private final ExecutorService people = Executors.newFixedThreadPool(PEOPLE);
    private final String address;
    private final Javalin bare;
    private final Connection rows;
    private volatile byte[] answer = new byte[0];
    private int saved;

    private AgainstBareServer(String address, Path directory) throws SQLException {
        this.address = address;
        this.rows = DriverManager.getConnection("jdbc:sqlite:" + directory.resolve("bare.sqlite"));
        try (var statement = rows.createStatement()) {
            statement.execute("pragma journal_mode = wal");
            statement.execute("pragma synchronous = full");
            statement.execute("create table visit (id text primary key, content text)");
        }
        this.bare = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.routes.post("/save", request -> {
                insert(request.body());
                request.status(201).contentType("application/json").result(answer);
            });
            config.routes.get("/look", request -> request.contentType("application/json").result(answer));
        }).start("127.0.0.1", 0);
    }

    private synchronized void insert(String body) throws SQLException {
        try (PreparedStatement statement = rows.prepareStatement("insert into visit (id, content) values (?, ?)")) {
            statement.setString(1, "b" + saved++);
            statement.setString(2, body);
            statement.execute();
        }
    }

    public static void main(String[] arguments) throws Exception {
        int units = Integer.parseInt(arguments[0]);
        int visits = Integer.parseInt(arguments[1]);
        int rounds = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 5;
        Path directory = Files.createTempDirectory("longsummer-performance");
        LargeFleet.write(directory, units, visits);
        try (Store store = Store.open(directory.resolve("record"))) {
            Import.run(store, Optional.of(directory.resolve("units.csv")), Optional.of(directory.resolve("visits.csv")), "", new Findings(),
                    Progress.SILENT);
            try (WebServer server = new WebServer(store, Clock.systemUTC(), any -> false).start("127.0.0.1", 0)) {
                System.out.printf(Locale.ROOT, "%d units of %d visits, %d people at once, %d rounds%n", units, visits, PEOPLE, rounds);
                AgainstBareServer comparison = new AgainstBareServer("http://127.0.0.1:" + server.port(), directory);
                comparison.saving(units, rounds);
                comparison.savingAndLooking(units, rounds);
                for (String look : LOOKS) {
                    comparison.looking(look, rounds, (person, i) -> look);
                }
                AtomicInteger pages = new AtomicInteger();
                comparison.looking("a page of the yard that nobody asked for before", rounds,
                        (person, i) -> "/api/yard?order=label&after=A&after_unit=N" + pages.incrementAndGet());
                plan(store, Math.min(units, PLANS));
                comparison.planned(Math.min(units, PLANS));
                comparison.end();
            }
        }
    }

    private void saving(int units, int rounds) throws Exception {
        double[][] ours = new double[rounds][];
        double[][] theirs = new double[rounds][];
        for (int round = 0; round < rounds; round++) {
            int now = round;
            HttpResponse<byte[]> first = client.send(visit(address + "/api/units/N0000001/visits", "first" + now), HttpResponse.BodyHandlers.ofByteArray());
            if (first.statusCode() != 201) {
                throw new IllegalStateException(first.statusCode() + " " + new String(first.body(), java.nio.charset.StandardCharsets.UTF_8));
            }
            answer = first.body();
            ours[round] = milliseconds((person, i) -> List.of(visit(address + "/api/units/N%07d/visits".formatted(1 + (person * 997 + i * 31) % units),
                    "s" + now + "p" + person + "i" + i)));
            theirs[round] = milliseconds((person, i) -> List.of(visit("http://127.0.0.1:" + bare.port() + "/save", "x")));
        }
        print("saving a visit", ours, theirs);
    }

    /** A visit and then the yard's first page, which has to be made anew; the wait is for both. */
    private void savingAndLooking(int units, int rounds) throws Exception {
        double[][] ours = new double[rounds][];
        double[][] theirs = new double[rounds][];
        answer = client.send(get(address + LOOKS.get(0)), HttpResponse.BodyHandlers.ofByteArray()).body();
        for (int round = 0; round < rounds; round++) {
            int now = round;
            ours[round] = milliseconds((person, i) -> List.of(visit(address + "/api/units/N%07d/visits".formatted(1 + (person * 613 + i * 37) % units),
                    "l" + now + "p" + person + "i" + i), get(address + LOOKS.get(0))));
            theirs[round] = milliseconds((person, i) -> List.of(visit("http://127.0.0.1:" + bare.port() + "/save", "x"),
                    get("http://127.0.0.1:" + bare.port() + "/look")));
        }
        print("saving a visit and the next look at the yard", ours, theirs);
    }

    private void looking(String what, int rounds, Address path) throws Exception {
        double[][] ours = new double[rounds][];
        double[][] theirs = new double[rounds][];
        long start = System.nanoTime();
        answer = client.send(get(address + path.of(0, 0)), HttpResponse.BodyHandlers.ofByteArray()).body();
        double first = (System.nanoTime() - start) / 1e6;
        for (int round = 0; round < rounds; round++) {
            ours[round] = milliseconds((person, i) -> List.of(get(address + path.of(person, i))));
            theirs[round] = milliseconds((person, i) -> List.of(get("http://127.0.0.1:" + bare.port() + "/look")));
        }
        print("%s, %d bytes, first answer %.0f ms".formatted(what, answer.length, first), ours, theirs);
    }

    private interface Address {
        String of(int person, int time);
    }

    /** One person alone: the list is looked at now and then. */
    private void planned(int plans) throws Exception {
        double[] waits = new double[10];
        for (int i = 0; i < waits.length; i++) {
            long start = System.nanoTime();
            client.send(get(address + "/api/planned-work"), HttpResponse.BodyHandlers.ofByteArray());
            waits[i] = (System.nanoTime() - start) / 1e6;
        }
        System.out.printf(Locale.ROOT, "/api/planned-work, %d plans: first answer %.0f ms, tenth %.0f ms%n", plans, waits[0], waits[waits.length - 1]);
    }

    private static void plan(Store store, int plans) {
        store.plans().add(IntStream.rangeClosed(1, plans).mapToObj(i -> new PlannedWork("w" + i, "N%07d".formatted(i), List.of(Work.EVAPORATOR_COIL),
                LocalDate.of(2027, 4, 1), Optional.empty(), "", "Ines", Instant.EPOCH, Optional.empty())).toList());
    }

    private static HttpRequest get(String uri) {
        return HttpRequest.newBuilder(URI.create(uri)).build();
    }

    private static HttpRequest visit(String uri, String id) {
        String json = """
                {"id": "%s", "boxes": {"visited_at": "2026-07-01T12:00", "utc_offset_minutes": "0", "technician": "Ines", "return_db_f": "78.0",
                "return_rh_pct": "50", "supply_db_f": "57.5", "supply_at": "discharge", "ambient_db_f": "92", "ambient_at": "inlet",
                "amps": "12.1", "volts": "117", "run_minutes": "18", "fan_speed": "high"}}""".formatted(id);
        return HttpRequest.newBuilder(URI.create(uri)).header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(json)).build();
    }

    private interface Asked {
        List<HttpRequest> by(int person, int time);
    }

    /** Every person's every wait. */
    private double[] milliseconds(Asked asked) throws Exception {
        List<Callable<double[]>> work = IntStream.range(0, PEOPLE).mapToObj(person -> (Callable<double[]>) () -> {
            double[] waits = new double[REQUESTS];
            for (int i = 0; i < REQUESTS; i++) {
                long start = System.nanoTime();
                for (HttpRequest request : asked.by(person, i)) {
                    HttpResponse<byte[]> answered = client.send(request, HttpResponse.BodyHandlers.ofByteArray());
                    if (answered.statusCode() / 100 != 2) {
                        throw new IllegalStateException(answered.statusCode() + " " + new String(answered.body(), java.nio.charset.StandardCharsets.UTF_8));
                    }
                }
                waits[i] = (System.nanoTime() - start) / 1e6;
            }
            return waits;
        }).toList();
        double[] all = new double[0];
        for (Future<double[]> waits : people.invokeAll(work)) {
            int before = all.length;
            all = Arrays.copyOf(all, before + REQUESTS);
            System.arraycopy(waits.get(), 0, all, before, REQUESTS);
        }
        Arrays.sort(all);
        return all;
    }

    /** The first round warms both up and is left out. */
    private static void print(String what, double[][] ours, double[][] theirs) {
        System.out.printf(Locale.ROOT, "%s: median %.1f ms, %.1f times; 99 of 100 within %.1f ms, %.1f times%n", what, at(ours, 0.5),
                at(ours, 0.5) / at(theirs, 0.5), at(ours, 0.99), at(ours, 0.99) / at(theirs, 0.99));
    }

    /** Median over the rounds of one quantile. */
    private static double at(double[][] rounds, double share) {
        double[] each = Arrays.stream(rounds).skip(1).mapToDouble(waits -> waits[(int) Math.ceil(share * waits.length) - 1]).sorted().toArray();
        return each[each.length / 2];
    }

    private void end() throws SQLException {
        people.shutdown();
        bare.stop();
        rows.close();
    }
}
