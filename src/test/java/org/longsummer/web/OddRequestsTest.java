package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.evidence.Project;
import org.longsummer.store.RecordCheck;
import org.longsummer.store.Session;

/** Odd requests to every address there is: answered, or refused in words with what to do, never failed at; and the record stays whole. */
class OddRequestsTest {
    private static final boolean LONG = Boolean.getBoolean("endurance");
    private static final int REQUESTS = Integer.getInteger("endurance.requests", LONG ? 100_000 : 1_500);
    /** A password takes a good part of a second by design, and a few wrong ones shut the door. */
    private static final Set<String> OF_PASSWORDS = Set.of("/api/session", "/api/invitation", "/api/account/password", "/api/account/programs");
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    @TempDir
    Path data;

    private final HttpClient client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final TurningClock clock = new TurningClock("2026-07-20T18:00:00Z");

    @Test
    void whateverIsAskedIsAnsweredOrRefusedInWords() throws IOException {
        Map<Integer, Integer> statuses = new TreeMap<>();
        List<String> wrong = new ArrayList<>();
        try (RunningServer server = new RunningServer(data, clock, Front.LOCAL)) {
            OddRequests requests = prepared(server);
            Staff staff = new Staff(server);
            String session = "";
            for (int i = 0; i < REQUESTS && wrong.size() < 20; i++) {
                if (i % 200 == 0) {
                    session = staff.session(Staff.ADMINISTRATOR, Session.Kind.BROWSER);
                }
                OddRequests.Drawn drawn = requests.draw();
                HttpResponse<String> reply = ask(server, drawn, session);
                if (reply.statusCode() == 401) {
                    session = staff.session(Staff.ADMINISTRATOR, Session.Kind.BROWSER);
                }
                statuses.merge(reply.statusCode(), 1, Integer::sum);
                fault(drawn, reply).ifPresent(wrong::add);
            }
        }
        assertTrue(wrong.isEmpty(), () -> String.join("\n", wrong));
        assertTrue(statuses.keySet().containsAll(Set.of(200, 201, 400, 404, 422)), statuses::toString);
        RecordCheck.Report report = RecordCheck.run(data, Clock.systemUTC(), unit -> { });
        assertEquals(List.of(), report.faults());
        assertEquals(List.of(), report.differingUnits());
        if (LONG) {
            Project.write(Project.EVIDENCE.resolve("endurance").resolve("Odd-requests"), "Odd requests to every address\t" + REQUESTS + " requests, answered "
                    + statuses + "; the record whole\n");
        }
    }

    private static OddRequests prepared(RunningServer server) {
        List<String> units = List.of(server.addUnit("Heron 7", Staff.OURS), server.addUnit("\u0645\u0627\u0644\u0643 7", Staff.THEIRS), server.addUnit("Heron 7", ""));
        units.forEach(unit -> server.saveVisit(unit, "of-" + unit, RunningServer.soundVisit("2026-07-18T11:30")));
        List<WebServer.Address> addresses = server.server.addresses().stream().filter(address -> address.path().startsWith("/api/") || address.path().equals("/health"))
                .filter(address -> !OF_PASSWORDS.contains(address.path()) || address.method().equals("GET")).toList();
        return new OddRequests(20260720, addresses, Map.of("unit", units, "visit", units.stream().map(unit -> "of-" + unit).toList()));
    }

    private HttpResponse<String> ask(RunningServer server, OddRequests.Drawn drawn, String session) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server.address(drawn.path().substring(1)))).timeout(PATIENCE)
                .header("Cookie", "longsummer=" + session).header("Origin", server.address("").replaceFirst("/$", ""))
                .method(drawn.method(), drawn.body() == null ? BodyPublishers.noBody() : BodyPublishers.ofString(drawn.body()));
        if (!drawn.contentType().isEmpty()) {
            request.header("Content-Type", drawn.contentType());
        }
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(drawn.toString(), e);
        }
    }

    private static Optional<String> fault(OddRequests.Drawn drawn, HttpResponse<String> reply) {
        Function<String, Optional<String>> told = what -> Optional.of(what + " " + reply.statusCode() + " to " + drawn + ": " + reply.body());
        if (reply.statusCode() >= 500) {
            return told.apply("failed");
        }
        if (reply.statusCode() < 400) {
            return Optional.empty();
        }
        try {
            JsonNode problems = new com.fasterxml.jackson.databind.ObjectMapper().readTree(reply.body()).path("problems");
            boolean inWords = !problems.isEmpty() && StreamSupport.stream(problems.spliterator(), false).allMatch(problem -> problem.has("field")
                    && problem.has("given") && !(problem.path("limit").asText() + problem.path("remedy").asText()).isBlank());
            return inWords ? Optional.empty() : told.apply("refused without words");
        } catch (IOException e) {
            return told.apply("refused without words");
        }
    }
}
