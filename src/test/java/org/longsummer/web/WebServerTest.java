package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Plate;
import org.longsummer.web.RunningServer.Answer;

/** The whole surface over real HTTP, with a real record. */
class WebServerTest {
    private static final Clock SUMMER = Clock.fixed(Instant.parse("2026-07-20T18:00:00Z"), ZoneOffset.UTC);

    private RunningServer server;

    @BeforeEach
    void start() {
        server = new RunningServer(SUMMER);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"yard/", "unit/", "visit/", "new-unit/", "shared/page.css", "shared/api.js", "unit/history.js",
        "webjars/chart.js/4.5.1/dist/chart.umd.min.js"})
    void pagesAndWhatTheyLoadAreServed(String path) {
        Answer answer = server.get(path);
        assertEquals(200, answer.status());
        assertFalse(answer.response().body().isBlank());
        assertTrue(answer.response().headers().firstValue("Content-Security-Policy").orElse("").contains("default-src 'self'"));
    }

    @Test
    void anEmptyRecordIsAFirstStart() {
        JsonNode yard = server.get("api/yard").body();
        assertEquals(0, yard.path("units_in_fleet").asInt());
        assertEquals(0, yard.path("rows").size());
        assertTrue(yard.path("next").isMissingNode(), "there is no other page");
    }

    @Test
    void aUnitIsAddedByItsPlate() {
        String id = server.addUnit("Heron 7 front", "Ferrow Flats");
        assertEquals("heron-7-front", id);
        Plate plate = server.store.units().find(id).orElseThrow().unit().plate();
        assertEquals(13_500, plate.nominal().orElseThrow().btuPerHour(), 1e-6);
        assertEquals(AmpsKind.INPUT, plate.ratedAmpsKind());
        assertEquals("heron-7-front-2", server.addUnit("Heron 7, front!", "Ferrow Flats"), "a name may be used twice");
        JsonNode yard = server.get("api/yard").body();
        assertEquals(2, yard.path("found").asInt());
        assertEquals("never_judged", yard.path("rows").get(0).path("state").asText());
        assertEquals("1230 ft", term(server.get("api/units/" + id).body().path("unit").path("plate"), "Altitude"));
    }

    private static String term(JsonNode plate, String term) {
        for (JsonNode line : plate) {
            if (line.path("term").asText().equals(term)) {
                return line.path("text").asText();
            }
        }
        return "";
    }

    @Test
    void allProblemsOfAFormAreNamedAtOnce() {
        Answer answer = server.post("api/units", Map.of("boxes", Map.of("nominal_btuh", "13.5", "rated_amps", "12 A",
                "rated_amps_kind", "peak", "installed_on", "spring")));
        assertEquals(422, answer.status());
        assertEquals(5, answer.body().path("problems").size());
        assertEquals("|A unit needs a name.|Type what you call it, for example the vehicle's number and “front”.", answer.problemAt("label"));
        assertEquals("13.5|Between 4000 and 60000 Btu/h can be taken here.|Check the number and its decimal point.",
                answer.problemAt("nominal_btuh"));
        assertTrue(answer.problemAt("rated_amps").startsWith("12 A|A number in A belongs here."));
        assertTrue(answer.problemAt("rated_amps_kind").contains("rla_plus_fan"));
        assertTrue(answer.problemAt("installed_on").startsWith("spring|"));
        assertEquals(0, server.store.units().count());
    }

    @Test
    void aDraftIsJudgedWithoutBeingStored() {
        String unit = server.addUnit("Heron 7", "Ferrow Flats");
        Map<String, String> boxes = RunningServer.soundVisit("2026-07-20T11:30");
        boxes.keySet().removeAll(List.of("supply_db_f", "amps"));
        JsonNode before = judge(unit, boxes).path("verdict");
        assertTrue(before.path("waiting").asBoolean());
        assertTrue(before.path("split").path("expected").path("number").asDouble() > 10, before.path("split").toString());
        assertEquals("°F", before.path("split").path("expected").path("unit").asText());
        assertTrue(before.path("split").path("measured").isMissingNode());

        JsonNode after = judge(unit, RunningServer.soundVisit("2026-07-20T11:30")).path("verdict");
        assertFalse(after.path("waiting").asBoolean());
        assertEquals("20.5 °F", after.path("split").path("measured").path("text").asText(), "a decimal comma is a decimal point");
        assertTrue(after.path("split").path("budget").size() > 3);
        assertEquals(0, server.store.visits().count());
    }

    private JsonNode judge(String unit, Map<String, String> boxes) {
        Answer answer = server.post("api/units/" + unit + "/judge", Map.of("boxes", boxes));
        assertEquals(200, answer.status(), () -> answer.body().toString());
        return answer.body();
    }

    @Test
    void theReaderChoosesTheUnitsAndTheTypedTextStays() {
        String unit = server.addUnit("Heron 7", "Ferrow Flats");
        Map<String, String> boxes = new HashMap<>(RunningServer.soundVisit("2026-07-20T11:30"));
        boxes.keySet().removeAll(List.of("return_db_f", "supply_db_f", "ambient_db_f"));
        boxes.putAll(Map.of("return_db_c", "25,50", "supply_db_c", "14.0", "ambient_db_c", "33.3"));
        assertEquals(201, server.saveVisit(unit, "v1", boxes).status());
        JsonNode metric = server.get("api/visits/v1?system=si").body();
        assertEquals("25.5 °C", metric.path("visit").path("shown").path("return_db").path("text").asText());
        assertEquals("11.5 °C", metric.path("verdict").path("split").path("measured").path("text").asText());
        JsonNode customary = server.get("api/visits/v1?system=us").body();
        assertEquals("20.7 °F", customary.path("verdict").path("split").path("measured").path("text").asText());
        assertEquals("25,50", customary.path("visit").path("boxes").path("return_db_c").asText());
        assertEquals("si", customary.path("visit").path("system").asText());
    }

    @Test
    void aTextThatIsNoNumberIsNamedWhileTypingAndRefusedOnSaving() {
        String unit = server.addUnit("Heron 7", "Ferrow Flats");
        Map<String, String> boxes = RunningServer.soundVisit("2026-07-20T11:30");
        boxes.put("amps", "12.x");
        JsonNode draft = judge(unit, boxes);
        assertEquals("amps", draft.path("problems").get(0).path("field").asText());
        assertFalse(draft.path("verdict").isMissingNode());
        Answer refused = server.saveVisit(unit, "v1", boxes);
        assertEquals(422, refused.status());
        assertTrue(refused.problemAt("amps").startsWith("12.x|"));
    }

    @Test
    void aDoubtfulReadingIsQuestionedAtItsBoxAndKept() {
        String unit = server.addUnit("Heron 7", "Ferrow Flats");
        Map<String, String> boxes = RunningServer.soundVisit("2026-07-20T11:30");
        boxes.put("amps", "0.1");
        JsonNode verdict = judge(unit, boxes).path("verdict");
        assertEquals("retake", verdict.path("state").asText());
        assertEquals("amps", verdict.path("findings").get(0).path("box").asText());
        assertEquals(201, server.saveVisit(unit, "v1", boxes).status());
        JsonNode page = server.get("api/units/" + unit).body();
        assertEquals("never_judged", page.path("state").asText());
        assertEquals("retake", page.path("to_retake").path("state").asText());
    }

    @Test
    void sendingTwiceStoresOnce() {
        String unit = server.addUnit("Heron 7", "Ferrow Flats");
        assertEquals(201, server.saveVisit(unit, "v1", RunningServer.soundVisit("2026-07-20T11:30")).status());
        Answer again = server.saveVisit(unit, "v1", RunningServer.soundVisit("2026-07-20T11:30"));
        assertEquals(200, again.status());
        assertTrue(again.body().path("stored_before").asBoolean());
        assertEquals(1, server.store.visits().count());
        Answer other = server.saveVisit(unit, "v1", RunningServer.soundVisit("2026-07-20T11:31"));
        assertEquals(409, other.status());
    }

    @Test
    void aCorrectionKeepsTheOldRowAndMarksIt() {
        String unit = server.addUnit("Heron 7", "Ferrow Flats");
        server.saveVisit(unit, "v1", RunningServer.soundVisit("2026-07-18T11:30"));
        Map<String, String> boxes = RunningServer.soundVisit("2026-07-18T11:30");
        boxes.put("supply_db_f", "56.9");
        assertTrue(correct("v1", "v2", boxes).problemAt("reason").contains("A correction needs its reason."));
        boxes.put("reason", "wrote 57.5 for 56.9");
        assertEquals(201, correct("v1", "v2", boxes).status());
        JsonNode visits = server.get("api/units/" + unit).body().path("visits");
        assertEquals(2, visits.size());
        assertFalse(visits.get(0).path("counts").asBoolean());
        assertEquals("corrected", visits.get(0).path("marking").path("kind").asText());
        assertEquals("wrote 57.5 for 56.9", visits.get(0).path("marking").path("reason").asText());
        assertEquals("Ines", visits.get(0).path("marking").path("by").asText());
        assertEquals("correction", visits.get(1).path("marking").path("kind").asText());
        assertEquals("21.1 °F", visits.get(1).path("split").path("measured").path("text").asText());
        assertEquals(409, correct("v1", "v3", boxes).status(), "only the row that counts can be corrected");
    }

    private Answer correct(String earlier, String id, Map<String, String> boxes) {
        return server.post("api/visits/" + earlier + "/correction", Map.of("id", id, "boxes", boxes));
    }

    @Test
    void aWithdrawalNeedsANameAndAReasonAndKeepsTheRow() {
        String unit = server.addUnit("Heron 7", "Ferrow Flats");
        server.saveVisit(unit, "v1", RunningServer.soundVisit("2026-07-18T11:30"));
        assertEquals(2, server.post("api/visits/v1/withdrawal", Map.of()).body().path("problems").size());
        assertEquals(200, server.post("api/visits/v1/withdrawal", Map.of("by", "Otto", "reason", "the other unit")).status());
        JsonNode row = server.get("api/units/" + unit).body().path("visits").get(0);
        assertEquals("withdrawn", row.path("marking").path("kind").asText());
        assertEquals("Otto", row.path("marking").path("by").asText());
        assertEquals(409, server.post("api/visits/v1/withdrawal", Map.of("by", "Otto", "reason", "again")).status());
        assertEquals("never_judged", server.get("api/yard").body().path("rows").get(0).path("state").asText());
    }

    @Test
    void theYardIsFilteredAndPagedByItsAddress() {
        for (int i = 0; i < 53; i++) {
            server.addUnit("Heron " + i, i % 2 == 0 ? "Ferrow Flats" : "Quarry Bend");
        }
        server.saveVisit("heron-3", "v1", RunningServer.soundVisit("2026-07-18T11:30"));
        JsonNode first = server.get("api/yard").body();
        assertEquals(50, first.path("rows").size());
        assertEquals(53, first.path("found").asInt());
        JsonNode next = first.path("next");
        JsonNode second = server.get("api/yard?after=" + next.path("after").asText() + "&after_unit=" + next.path("after_unit").asText()).body();
        assertEquals(3, second.path("rows").size());
        assertTrue(second.path("next").isMissingNode());
        JsonNode depot = server.get("api/yard?depot=Quarry%20Bend").body();
        assertEquals(26, depot.path("found").asInt());
        assertEquals(25, server.get("api/yard?depot=Quarry%20Bend&seen=unvisited").body().path("found").asInt());
        assertEquals(1, server.get("api/yard?text=heron%2017").body().path("found").asInt());
        assertEquals(0, server.get("api/yard?seen=unvisited&since=2026-07-25&state=act").body().path("found").asInt());
    }

    @Test
    void whatAnAddressCannotMeanIsRefusedInOneShape() {
        for (String path : List.of("api/yard?after=x&after_unit=y", "api/yard?duty=asleep", "api/yard?older=old", "api/yard?state=fine", "api/yard?order=age", "api/yard?system=metric",
                "api/yard?since=spring", "api/yard?condition=rust")) {
            Answer answer = server.get(path);
            assertTrue(answer.status() == 400 || answer.status() == 422, path);
            assertEquals(1, answer.body().path("problems").size(), path);
            assertFalse(answer.body().path("problems").get(0).path("remedy").asText().isEmpty(), path);
        }
        for (String path : List.of("api/units/nobody", "api/visits/none", "api/nothing")) {
            Answer answer = server.get(path);
            assertEquals(404, answer.status(), path);
            assertEquals(1, answer.body().path("problems").size(), path);
        }
        assertEquals(400, server.post("api/units", "{\"boxes\": ").status());
        assertEquals(404, server.get("no/such/page").status());
    }

    @Test
    void aBodyWithoutBoxesIsAForm() {
        Answer answer = server.post("api/units", "{}");
        assertEquals(422, answer.status());
        assertTrue(answer.problemAt("label").contains("needs a name"));
        assertEquals(400, server.post("api/units", "null").status());
        assertEquals(400, server.post("api/units", "").status());
    }

    @Test
    void anotherSitesPageMayNotWriteHere() {
        Answer answer = server.send(HttpRequest.newBuilder(URI.create(server.address("api/units"))).header("Origin", "http://elsewhere.example")
                .POST(BodyPublishers.ofString("{\"boxes\":{\"label\":\"x\"}}")));
        assertEquals(403, answer.status());
        assertEquals(0, server.store.units().count());
    }

    @Test
    void everyPageCanAskWhetherThisIsTheDemo() {
        assertFalse(server.get("api/house").body().path("demo").asBoolean());
        assertTrue(server.post("api/demo", "{}").body().path("demo").asBoolean());
        assertTrue(server.get("api/house").body().path("units").asInt() > 20);
        assertEquals(409, server.post("api/demo", "{}").status(), "twice");
        assertFalse(server.delete("api/demo").body().path("demo").asBoolean());
        assertEquals(0, server.get("api/house").body().path("units").asInt());
        server.addUnit("Heron 7", "Ferrow Flats");
        assertEquals(409, server.post("api/demo", "{}").status(), "beside real units");
        assertEquals(409, server.delete("api/demo").status(), "real units are not the demo");
    }

    @Test
    void filesAreTakenWhollyOrNotAtAll() {
        String units = "unit_id,label,nominal_btuh\nu1,Heron 1,13500\n";
        String visits = "unit_id,visited_at,return_db_f,supply_db_f,amps\nu1,2026-07-01T13:00:00-06:00,78,57.5,12.1\n";
        Answer refused = server.upload(Map.of("units", units, "visits", visits + "u1,,78,57,1x\nu9,2026-07-01T13:00:00-06:00,78,57,12\n"));
        assertEquals(422, refused.status());
        assertEquals(3, refused.body().path("problems").size(), () -> refused.body().toString());
        assertTrue(refused.problemAt("visits.csv, row 3, amps").startsWith("1x|"), () -> refused.body().toString());
        assertEquals(0, server.store.units().count());
        Answer taken = server.upload(Map.of("units", units, "visits", visits));
        assertEquals(200, taken.status(), () -> taken.body().toString());
        assertEquals(1, taken.body().path("visits_stored").asInt());
        assertEquals(1, server.upload(Map.of("units", units, "visits", visits)).body().path("visits_already_stored").asInt());
        assertEquals(422, server.upload(Map.of()).status());
    }

    @Test
    void namesInAnyScriptAreKept() {
        String id = server.addUnit("シャトル 7 «Ñandú» <b>", "Ciénaga");
        JsonNode unit = server.get("api/units/" + java.net.URLEncoder.encode(id, java.nio.charset.StandardCharsets.UTF_8)).body();
        assertEquals("シャトル 7 «Ñandú» <b>", unit.path("unit").path("label").asText());
        assertEquals(Optional.of("Ciénaga"), Optional.of(unit.path("unit").path("depot").asText()));
    }
}
