package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.longsummer.web.RunningServer.Answer;

/** What is rare and right: nights on which clocks are changed, leap days, other mains, places below the sea, many units of one name. */
class OddRecordsTest {
    private final TurningClock clock = new TurningClock("2026-11-20T18:00:00Z");
    private RunningServer server;

    @BeforeEach
    void start() {
        server = new RunningServer(clock);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private Answer save(String unit, String id, String at, String... namesAndTexts) {
        Map<String, String> boxes = new LinkedHashMap<>(RunningServer.soundVisit(at));
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            boxes.put(namesAndTexts[i], namesAndTexts[i + 1]);
        }
        return server.saveVisit(unit, id, boxes);
    }

    private void saved(String unit, String id, String at, String... namesAndTexts) {
        Answer answer = save(unit, id, at, namesAndTexts);
        assertEquals(201, answer.status(), () -> answer.body().toString());
    }

    private String added(String... namesAndTexts) {
        Map<String, String> boxes = new LinkedHashMap<>(Map.of("label", "Heron 7", "site", "Quarry Bend", "nominal_btuh", "13,500", "rated_amps", "12.4",
                "rated_amps_kind", "input", "rated_volts", "115"));
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            boxes.put(namesAndTexts[i], namesAndTexts[i + 1]);
        }
        Answer answer = server.post("api/units", Map.of("boxes", boxes));
        assertEquals(201, answer.status(), () -> answer.body().toString());
        return answer.body().path("unit_id").asText();
    }

    private JsonNode row(String unit, String visit) {
        for (JsonNode row : server.get("api/units/" + unit).body().path("visits")) {
            if (row.path("id").asText().equals(visit)) {
                return row;
            }
        }
        throw new AssertionError("no row " + visit);
    }

    /** In spring an hour is not on the clock, in autumn one is on it twice: the earlier offset is meant, as the zone's own rules have it. */
    @Test
    void visitsInTheNightsOnWhichTheClocksAreChangedHaveOneMoment() {
        assertEquals(200, server.post("api/depots", Map.of("boxes", Map.of("name", "Quarry Bend", "time_zone", "America/Denver"))).status());
        String unit = added();
        saved(unit, "before", "2026-03-08T01:59");
        saved(unit, "in-the-gap", "2026-03-08T02:30");
        saved(unit, "after", "2026-03-08T03:31");
        saved(unit, "first", "2026-11-01T00:59");
        saved(unit, "twice", "2026-11-01T01:30");
        saved(unit, "then", "2026-11-01T02:00");
        Map<String, String> moments = new LinkedHashMap<>();
        for (String visit : List.of("before", "in-the-gap", "after", "first", "twice", "then")) {
            moments.put(visit, server.store.visits().find(visit).orElseThrow().visit().at().toString());
        }
        assertEquals(Map.of("before", "2026-03-08T08:59:00Z", "in-the-gap", "2026-03-08T09:30:00Z", "after", "2026-03-08T09:31:00Z",
                "first", "2026-11-01T06:59:00Z", "twice", "2026-11-01T07:30:00Z", "then", "2026-11-01T09:00:00Z"), moments);
        assertEquals(6, server.get("api/units/" + unit).body().path("visits").size());
    }

    @Test
    void aLeapDayIsADayAndItsAnniversaryIsReached() {
        clock.turn(Duration.ofDays(-630));
        String unit = added("installed_on", "2024-02-29", "warranty_until", "2028-02-29");
        saved(unit, "leap", "2024-02-29T12:00");
        assertEquals("2024-02-29T12:00-06:00", row(unit, "leap").path("at").asText());
        Answer noLeapYear = save(unit, "none", "2023-02-29T12:00");
        assertEquals(422, noLeapYear.status());
        assertTrue(noLeapYear.problemAt("visited_at").startsWith("2023-02-29T12:00|"), noLeapYear.body()::toString);
        for (String now : List.of("2025-02-28", "2025-03-01", "2028-02-29")) {
            clock.turn(Duration.between(clock.instant(), java.time.Instant.parse(now + "T18:00:00Z")));
            for (String path : List.of("api/yard?older=1", "api/units/" + unit, "api/units/" + unit + "/ahead", "api/units/" + unit + "/weighing", "api/season")) {
                Answer answer = server.get(path);
                assertEquals(200, answer.status(), () -> now + " " + path + ": " + answer.body());
            }
        }
        assertEquals(1, server.get("api/yard?older=1").body().path("found").asInt());
    }

    /** Twice the volts and half the amps are the same machine to its physics; with 220 V and 50 Hz on its plate it is as welcome. */
    @Test
    void aPlateOf230VoltsIsJudgedByItsOwnVolts() {
        String here = added();
        String there = added("rated_volts", "230", "rated_amps", "6.2");
        saved(here, "h", "2026-07-18T12:00", "volts", "117", "amps", "12.1");
        saved(there, "t", "2026-07-18T12:00", "volts", "234", "amps", "6.05");
        JsonNode h = row(here, "h");
        JsonNode t = row(there, "t");
        assertEquals(h.path("state").asText(), t.path("state").asText());
        assertEquals(h.path("split").path("departure"), t.path("split").path("departure"));
        assertEquals(h.path("amps").path("departure").path("text"), t.path("amps").path("departure").path("text"), t::toString);
        String metric = added("rated_volts", "220", "rated_amps", "6.5", "model", "NB-135/50 Hz", "altitude_m", "120");
        saved(metric, "m", "2026-07-18T13:00", "volts", "221", "amps", "6.4");
        assertTrue(List.of("steady", "drifting", "act").contains(row(metric, "m").path("state").asText()), () -> row(metric, "m").toString());
    }

    @Test
    void aPlaceBelowTheSeaIsAPlaceAndOneBelowAllLandIsRefused() {
        String unit = added("altitude_ft", "-282");
        saved(unit, "low", "2026-07-18T12:00");
        assertTrue(List.of("steady", "drifting", "act").contains(row(unit, "low").path("state").asText()));
        Answer refused = server.post("api/units", Map.of("boxes", Map.of("label", "Mole 1", "altitude_ft", "-2,000")));
        assertEquals(422, refused.status());
        assertTrue(refused.problemAt("altitude_ft").startsWith("-2,000|Between -1400 and 20000 ft"), refused.body()::toString);
    }

    /** A reader's clock may be ahead of the server's or of a time zone further east; a visit of next year is a slip. */
    @Test
    void aVisitOfTheFutureIsRefusedInWords() {
        String unit = added();
        saved(unit, "clock-ahead", "2026-11-21T10:00");
        Answer refused = save(unit, "slip", "2027-07-18T12:00");
        assertEquals(422, refused.status());
        assertTrue(refused.problemAt("visited_at").startsWith("2027-07-18T12:00|A visit lies between 1970 and now"), refused.body()::toString);
        assertEquals(1, server.store.visits().count());
    }

    @Test
    void visitsThatComeOutOfOrderAreJudgedInOrder() {
        List<String> times = List.of("2026-05-18T12:00", "2026-06-18T12:00", "2026-07-18T12:00", "2026-08-18T12:00");
        String inOrder = added();
        String turned = added();
        for (int i = 0; i < 4; i++) {
            saved(inOrder, "a" + i, times.get(i), "supply_db_f", "" + (57 + 2 * i));
            int last = 3 - i;
            saved(turned, "b" + last, times.get(last), "supply_db_f", "" + (57 + 2 * last));
        }
        assertEquals(visitsOf(inOrder, "a"), visitsOf(turned, "b"));
    }

    private List<String> visitsOf(String unit, String named) {
        List<String> rows = new ArrayList<>();
        server.get("api/units/" + unit).body().path("visits").forEach(row -> rows.add(row.toString().replaceAll("\"" + named + "(\\d)\"", "\"v$1\"")));
        return rows;
    }

    @Test
    void thousandsOfUnitsOfOneNameAreToldApartAndListedOnceEach() {
        int count = 2_000;
        Set<String> ids = new HashSet<>();
        StringBuilder file = new StringBuilder("unit_id,label,site\n");
        for (int i = 0; i < count - 5; i++) {
            ids.add("h" + i);
            file.append('h').append(i).append(",Heron 7,Quarry Bend\n");
        }
        assertEquals(200, server.upload(Map.of("units", file.toString())).status());
        for (int i = 0; i < 5; i++) {
            ids.add(added());
        }
        assertEquals(count, ids.size());
        for (String order : List.of("label", "waiting")) {
            List<String> listed = new ArrayList<>();
            String next = "";
            do {
                JsonNode page = server.get("api/yard?text=heron&order=" + order + next).body();
                page.path("rows").forEach(row -> listed.add(row.path("unit_id").asText()));
                JsonNode following = page.path("next");
                next = following.isMissingNode() ? "" : "&after=" + encoded(following.path("after").asText()) + "&after_unit="
                        + encoded(following.path("after_unit").asText());
            } while (!next.isEmpty() && listed.size() <= count);
            assertEquals(count, listed.size(), order);
            assertEquals(ids, new HashSet<>(listed), order);
        }
    }

    /** Somebody who reads one unit every few hours for a year. */
    @Test
    void aHistoryOfTwoThousandVisitsIsTakenInShownAndGoneOnWith() {
        String unit = added();
        StringBuilder file = new StringBuilder("visit_id,unit_id,visited_at,return_db_f,return_rh_pct,supply_db_f,ambient_db_f,amps,volts\n");
        for (int i = 0; i < 2_000; i++) {
            file.append("v").append(i).append(',').append(unit).append(',').append(java.time.Instant.parse("2025-11-01T06:00:00Z").plusSeconds(14_400L * i))
                    .append(",78,").append(45 + i % 11).append(",57.").append(i % 10).append(",92,12.").append(i % 4).append(",117\n");
        }
        Answer taken = server.upload(Map.of("visits", file.toString()));
        assertEquals(2_000, taken.body().path("visits_stored").asInt(), taken.body()::toString);
        saved(unit, "one-more", "2026-11-19T12:00");
        assertEquals(2_001, server.get("api/units/" + unit).body().path("visits").size());
        for (String path : List.of("ahead", "weighing", "sheet", "sheet.pdf", "blank-visit", "changes")) {
            assertEquals(200, server.get("api/units/" + unit + "/" + path).status(), path);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
