package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.season.Climate;
import org.longsummer.store.Depot;
import org.longsummer.web.RunningServer.Answer;

/** The manager's side over HTTP: the yard's filters, what is done with chosen units, rounds and where units stand. */
class YardApiTest {
    private final TurningClock clock = new TurningClock("2026-07-20T18:00:00Z");
    private RunningServer server;

    @BeforeEach
    void start() {
        server = new RunningServer(clock);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private int found(String query) {
        Answer answer = server.get("api/yard?" + query);
        assertEquals(200, answer.status(), answer.body()::toString);
        return answer.body().path("found").asInt();
    }

    private static int sentence(JsonNode yard, String key) {
        for (JsonNode sentence : yard.path("sentences")) {
            if (sentence.path("key").asText().equals(key)) {
                return sentence.path("count").asInt();
            }
        }
        return -1;
    }

    private static List<String> ids(JsonNode rows) {
        List<String> ids = new ArrayList<>();
        rows.forEach(row -> ids.add(row.path("unit_id").asText()));
        return ids;
    }

    /** Each sentence counts what its own filter lists. */
    @Test
    void everySentenceIsAFilterThatListsWhatItCounts() {
        server.addUnit("Heron 1", "Ferrow Flats");
        server.addUnit("Heron 2", "Ferrow Flats");
        server.addUnit("Heron 3", "Lake Orrin");
        server.saveVisit("heron-1", "v1", RunningServer.soundVisit("2026-07-18T11:30"));
        server.post("api/yard/planned-work", Map.of("id", "p1", "choice", Map.of("units", List.of("heron-2")),
                "boxes", Map.of("works", "filter", "planned_for", "2026-07-22")));
        JsonNode yard = server.get("api/yard").body();
        int told = 0;
        for (JsonNode sentence : yard.path("sentences")) {
            StringBuilder query = new StringBuilder();
            sentence.path("filter").properties().forEach(part -> query.append(part.getKey()).append('=').append(part.getValue().asText()).append('&'));
            assertEquals(sentence.path("count").asInt(), found(query.toString()), sentence::toString);
            told += sentence.path("count").asInt() > 0 ? 1 : 0;
        }
        assertTrue(told >= 5, yard::toString);
        assertEquals(2, sentence(yard, "unvisited"));
        assertEquals(1, sentence(yard, "planned"));
    }

    /** The same visit in May is this season's check in the north, and last season's in the south. */
    @Test
    void theSeasonsCheckIsThatOfTheDepot() {
        for (String depot : List.of("North", "South", "Always")) {
            server.addUnit(depot, depot);
        }
        server.store.depots().save(new Depot("North", java.util.Optional.empty(), java.util.Optional.empty(), java.util.Optional.of(Climate.NORTHERN)));
        server.store.depots().save(new Depot("South", java.util.Optional.empty(), java.util.Optional.empty(), java.util.Optional.of(Climate.SOUTHERN)));
        server.store.depots().save(new Depot("Always", java.util.Optional.empty(), java.util.Optional.empty(), java.util.Optional.of(new Climate(
                java.util.Collections.nCopies(12, 6.0), java.time.MonthDay.of(1, 1), java.time.MonthDay.of(12, 31)))));
        for (String unit : List.of("north", "south", "always")) {
            assertEquals(201, server.saveVisit(unit, "v" + unit, RunningServer.soundVisit("2026-05-10T11:30")).status());
        }
        assertEquals(0, found("seen=unvisited"), "in July all three were checked: the south's season opens in October");
        clock.turn(java.time.Duration.ofDays(30));
        assertEquals(List.of("south"), ids(server.get("api/yard?seen=unvisited").body().path("rows")), "its season opens within sixty days");
        clock.turn(java.time.Duration.ofDays(90));
        assertEquals(2, found("seen=unvisited"), "a new year is near where the season never closes");
        assertEquals(3, found("seen=unvisited&since=2026-06-01"), "or since a day that one names");
    }

    @Test
    void chosenUnitsBecomeAFileThatASpreadsheetCannotRun() {
        server.addUnit("=HYPERLINK(\"x\")", "Ferrow Flats");
        server.addUnit("渡り鳥 7", "Ferrow Flats");
        Answer whole = server.get("api/yard.csv?depot=Ferrow%20Flats");
        assertEquals(200, whole.status());
        assertTrue(whole.response().headers().firstValue("Content-Type").orElse("").startsWith("text/csv"));
        assertTrue(whole.response().body().contains("\"'=HYPERLINK"), whole.response().body());
        assertTrue(whole.response().body().contains("渡り鳥 7"));
        assertEquals(3, whole.response().body().lines().count());
        String id = server.get("api/yard?text=7").body().path("rows").get(0).path("unit_id").asText();
        assertEquals(2, server.post("api/yard.csv", Map.of("units", List.of(id))).response().body().lines().count());
        assertEquals(3, server.post("api/yard.csv", Map.of("filter", Map.of("state", "never_judged"), "expected", 2)).response().body().lines().count());
        assertEquals(409, server.post("api/yard.csv", Map.of("filter", Map.of(), "expected", 5)).status(), "the list has changed");
        assertEquals(422, server.post("api/yard.csv", Map.of()).status());
    }

    @Test
    void workIsPlannedOnceForAllThatFit() {
        IntStream.range(0, 7).forEach(i -> server.addUnit("Heron " + i, "Ferrow Flats"));
        Map<String, Object> plan = Map.of("id", "plan1", "choice", Map.of("filter", Map.of("depot", "Ferrow Flats"), "expected", 7),
                "boxes", Map.of("works", "filter,condenser_coil", "planned_for", "2026-08-01", "by", "Ada"));
        assertEquals(7, server.post("api/yard/planned-work", plan).body().path("planned").asInt());
        assertEquals(201, server.post("api/yard/planned-work", plan).status());
        assertEquals(7, found("planned=yes"));
        assertEquals(0, found("planned=no"));
        assertEquals(1, server.store.plans().toDo("heron-3").size(), "sent twice, planned once");
        assertEquals(34_500, server.store.plans().toDo("heron-3").get(0).price().orElseThrow().minor(),
                "by the list's defaults: a call of 110, a filter of 10, one and a half hours of 150");
        Answer refused = server.post("api/yard/planned-work", Map.of("id", "", "choice", Map.of("units", List.of("heron-1")), "boxes", Map.of("price", "-3")));
        assertEquals(422, refused.status());
        assertEquals(4, refused.body().path("problems").size(), refused.body()::toString);
    }

    private Answer round(String id, List<String> units) {
        return server.post("api/rounds", Map.of("id", id, "choice", Map.of("units", units), "boxes", Map.of("title", "Tuesday", "day", "2026-07-21", "by", "Ada")));
    }

    @Test
    void aRoundGoesByDepotRowAndPlaceAndIsTypedInOnce() {
        for (int i : List.of(10, 2, 1)) {
            server.addUnit("Heron " + i, "Ferrow Flats");
        }
        server.addUnit("Crane 4", "Alder Reach");
        assertEquals(201, round("r1", List.of("heron-10", "heron-2", "crane-4", "heron-1")).status());
        assertEquals(201, round("r1", List.of("heron-1")).status(), "the same round again");
        JsonNode round = server.get("api/rounds/r1").body();
        assertEquals(List.of("crane-4", "heron-1", "heron-2", "heron-10"), ids(round.path("stops")), "2 comes before 10");
        JsonNode anew = server.post("api/rounds/r1/stands", Map.of("stands", List.of(Map.of("unit_id", "heron-10", "row", "B", "place", "2"),
                Map.of("unit_id", "heron-1", "row", "B", "place", "11"), Map.of("unit_id", "nobody", "row", "A", "place", "1")))).body();
        assertEquals(List.of("crane-4", "heron-10", "heron-1", "heron-2"), ids(anew.path("stops")), "by row and place; without one comes last");
        String visitId = anew.path("stops").get(1).path("visit_id").asText();
        assertEquals(201, server.saveVisit("heron-10", visitId, RunningServer.soundVisit("2026-07-20T11:30")).status());
        Answer again = server.saveVisit("heron-10", visitId, RunningServer.soundVisit("2026-07-20T11:30"));
        assertTrue(again.body().path("stored_before").asBoolean(), "typed in twice, stored once");
        JsonNode after = server.get("api/rounds/r1").body().path("stops").get(1);
        assertTrue(after.path("visited").asBoolean());
        assertEquals("12.1 A", after.path("last").path("amps").path("text").asText());
        JsonNode brief = server.get("api/rounds").body().path("rounds").get(0);
        assertEquals("4 stops, 1 visited", brief.path("stops").asInt() + " stops, " + brief.path("visited").asInt() + " visited");
    }

    @Test
    void aRoundHasSomeUnitsAndNotTooMany() {
        server.addUnit("Heron 1", "Ferrow Flats");
        for (List<String> units : List.of(List.<String>of(), List.of("nobody"), IntStream.range(0, 301).mapToObj(i -> "u" + i).toList())) {
            Answer answer = round("r2", units);
            assertEquals(422, answer.status());
            assertEquals("units", answer.body().path("problems").get(0).path("field").asText());
        }
        assertEquals(404, server.get("api/rounds/r2").status());
    }

    /** A round over two depots shows each person what he sees of it, and a place beyond is not his to say. */
    @Test
    void peopleOfOneDepotSeeAndChangeTheirPartAlone() {
        server.addUnit("Heron 1", Staff.OURS);
        server.addUnit("Crane 1", Staff.THEIRS);
        round("r1", List.of("heron-1", "crane-1"));
        Staff staff = new Staff(server);
        Caller moss = staff.at("Moss Tarrin");
        assertEquals(List.of("heron-1"), ids(moss.get("/api/rounds/r1").body().path("stops")));
        assertEquals(1, moss.get("/api/rounds").body().path("rounds").get(0).path("stops").asInt());
        moss.post("/api/rounds/r1/stands", Map.of("stands", List.of(Map.of("unit_id", "crane-1", "row", "Z", "place", "9"))));
        assertEquals("", staff.at("Quill Danner").get("/api/rounds/r1").body().path("stops").get(0).path("row").asText());
        assertEquals(0, moss.post("/api/yard/planned-work", Map.of("id", "p", "choice", Map.of("units", List.of("crane-1")), "boxes",
                Map.of("works", "filter", "planned_for", "2026-08-01"))).body().path("planned").asInt());
        assertEquals(List.of(), server.store.plans().toDo("crane-1"));
        assertFalse(moss.post("/api/yard.csv", Map.of("units", List.of("crane-1", "heron-1"))).text().contains("Crane"));
        assertFalse(moss.get("/api/yard.csv").text().contains("Crane"));
        Map<String, Object> theirs = new LinkedHashMap<>(Map.of("id", "r3", "choice", Map.of("units", List.of("crane-1")), "boxes", Map.of()));
        assertEquals(422, moss.post("/api/rounds", theirs).status());
    }
}
