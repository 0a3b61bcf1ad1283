package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
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
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.FleetUnit.Duty;
import org.longsummer.web.RunningServer.Answer;

/** What becomes of units, their photos, their depots, and whose instruments and whose paper it is: over real HTTP. */
class FleetApiTest {
    private static final Clock SUMMER = Clock.fixed(Instant.parse("2026-07-20T18:00:00Z"), ZoneOffset.UTC);
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0, 1, 2, 3};

    private RunningServer server;
    private String front;
    private String rear;

    @BeforeEach
    void start() {
        server = new RunningServer(SUMMER);
        front = server.addUnit("Heron 7 front", "Ferrow Flats");
        rear = server.addUnit("Heron 7 rear", "Ferrow Flats");
        change(front, "vehicle", "Heron 7", "roof_position", "front", "serial", "QT 100", "by", "Otto");
        change(rear, "vehicle", "Heron 7", "roof_position", "rear", "serial", "QT 200", "by", "Otto");
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private static Map<String, String> texts(String... namesAndTexts) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            texts.put(namesAndTexts[i], namesAndTexts[i + 1]);
        }
        return texts;
    }

    private Answer post(String path, String... namesAndTexts) {
        return server.post(path, Map.of("boxes", texts(namesAndTexts)));
    }

    private Answer change(String unit, String... namesAndTexts) {
        Map<String, String> boxes = new HashMap<>();
        server.get("api/units/" + unit + "/form").body().path("boxes").properties()
                .forEach(box -> boxes.put(box.getKey(), box.getValue().asText()));
        boxes.putAll(texts(namesAndTexts));
        return server.post("api/units/" + unit + "/form", Map.of("boxes", boxes));
    }

    private FleetUnit unit(String id) {
        return server.store.units().find(id).orElseThrow();
    }

    private JsonNode lastChange(String unit) {
        JsonNode changes = server.get("api/units/" + unit).body().path("changes");
        return changes.get(changes.size() - 1);
    }

    @Test
    void aPlateIsChangedAndTheRecordSaysWhatItWas() {
        Answer nobody = change(front, "nominal_btuh", "15,000");
        assertTrue(nobody.problemAt("by").contains("A change needs a name."));
        assertEquals(200, change(front, "nominal_btuh", "15,000", "by", "Ines", "reason", "read the plate again").status());
        assertEquals(15_000, unit(front).unit().plate().nominal().orElseThrow().btuPerHour(), 1e-6);
        JsonNode change = lastChange(front);
        assertEquals("edited", change.path("kind").asText());
        assertEquals("Ines", change.path("by").asText());
        assertEquals("2026-07-20", change.path("on").asText());
        assertEquals("read the plate again", change.path("reason").asText());
        assertEquals(1, change.path("fields").size(), change.toString());
        assertEquals("nominal_btuh", change.path("fields").get(0).path("field").asText());
        assertEquals("13500", change.path("fields").get(0).path("before").asText());
        int before = server.get("api/units/" + front).body().path("changes").size();
        assertEquals(200, change(front, "by", "Ines").status());
        assertEquals(before, server.get("api/units/" + front).body().path("changes").size(), "nothing differed, nothing is recorded");
    }

    @Test
    void theFormGivesBackWhatIsKnown() {
        JsonNode boxes = server.get("api/units/" + front + "/form?system=si").body().path("boxes");
        assertEquals("375", boxes.path("altitude_m").asText());
        assertEquals("12.4", boxes.path("rated_amps").asText());
        assertEquals("input", boxes.path("rated_amps_kind").asText());
        FleetUnit before = unit(front);
        change(front, "by", "Otto");
        assertEquals(before, unit(front), "saving what was shown changes nothing");
    }

    @Test
    void aMachineMovesWithItsVisits() {
        server.saveVisit(front, "v1", RunningServer.soundVisit("2026-07-18T11:30"));
        post("api/depots", "name", "Lake Orrin", "altitude_ft", "640", "time_zone", "America/Chicago");
        Answer moved = post("api/units/" + front + "/move", "label", "Crane 2 middle", "site", "Lake Orrin", "vehicle", "Crane 2",
                "roof_position", "middle", "by", "Otto", "happened_on", "2026-07-19");
        assertEquals(200, moved.status(), () -> moved.body().toString());
        assertEquals("Crane 2", unit(front).vehicle());
        assertEquals(640, unit(front).unit().altitude().feet(), 1e-6, "it stands at the depot's altitude now");
        assertEquals(1, server.store.visits().current(front).size());
        assertEquals("moved", lastChange(front).path("kind").asText());
        assertEquals("2026-07-19", lastChange(front).path("on").asText());
        assertTrue(post("api/units/" + front + "/move", "label", "x", "by", "Otto", "happened_on", "2026-07-25").problemAt("happened_on")
                .contains("between 1970 and today"));
    }

    @Test
    void frontAndRearMixedUpArePutRight() {
        server.saveVisit(front, "v1", RunningServer.soundVisit("2026-07-18T11:30"));
        assertTrue(post("api/units/" + front + "/swap", "other_unit", front, "what", "places", "by", "Ines").problemAt("other_unit")
                .contains("Another unit belongs here."));
        assertEquals(200, post("api/units/" + front + "/swap", "other_unit", rear, "what", "places", "by", "Ines").status());
        assertEquals("rear", unit(front).roofPosition());
        assertEquals("Heron 7 rear", unit(front).unit().label());
        assertEquals("Heron 7 front", unit(rear).unit().label());
        assertEquals("QT 100", unit(front).serial(), "the machine keeps its plate");
        assertEquals(1, server.store.visits().current(front).size(), "and its visits");
        assertEquals(rear, lastChange(front).path("other").path("id").asText());
        assertEquals(200, post("api/units/" + front + "/swap", "other_unit", rear, "what", "plates", "by", "Ines").status());
        assertEquals("QT 200", unit(front).serial());
        assertEquals("rear", unit(front).roofPosition());
        assertEquals("plates_swapped", lastChange(rear).path("kind").asText());
    }

    @Test
    void aNewMachineTakesThePlaceOfTheOldOne() {
        server.saveVisit(front, "v1", RunningServer.soundVisit("2026-07-18T11:30"));
        Answer replaced = post("api/units/" + front + "/replacement", "label", "Heron 7 front", "site", "Ferrow Flats", "vehicle", "Heron 7",
                "roof_position", "front", "serial", "NEW 1", "nominal_btuh", "15000", "by", "Otto", "old_duty", "sold", "reason", "seized");
        assertEquals(201, replaced.status(), () -> replaced.body().toString());
        String added = replaced.body().path("unit_id").asText();
        assertEquals("Heron 7 front", unit(added).unit().label());
        assertEquals(0, server.store.visits().current(added).size(), "a new machine has no past");
        assertEquals(Duty.SOLD, unit(front).duty());
        assertEquals("Heron 7 front until 2026-07-20", unit(front).unit().label());
        assertEquals("", unit(front).vehicle());
        assertEquals(1, server.store.visits().current(front).size());
        assertEquals("replaced", lastChange(front).path("kind").asText());
        assertEquals("took_place", lastChange(added).path("kind").asText());
        assertEquals(front, lastChange(added).path("other").path("id").asText());
        assertEquals(2, server.get("api/yard").body().path("found").asInt(), "the old one is not in service");
        assertEquals(1, server.get("api/yard?duty=out").body().path("found").asInt());
    }

    @Test
    void aVisitOfTheOtherUnitGoesThereWithItsPhotosAsTyped() {
        server.saveVisit(front, "v1", RunningServer.soundVisit("2026-07-18T11:30"));
        photo("v1", "p1", JPEG);
        assertTrue(post("api/visits/v1/other-unit", "other_unit", rear, "new_id", "v2", "by", "Ines").problemAt("reason")
                .contains("needs its reason"));
        Answer given = post("api/visits/v1/other-unit", "other_unit", rear, "new_id", "v2", "by", "Ines", "reason", "stood at the rear one");
        assertEquals(200, given.status(), () -> given.body().toString());
        assertEquals(0, server.store.visits().current(front).size());
        assertEquals("withdrawn", server.get("api/units/" + front).body().path("visits").get(0).path("marking").path("kind").asText());
        assertEquals("57,5", server.get("api/visits/v2").body().path("visit").path("boxes").path("supply_db_f").asText());
        assertEquals("steady", server.get("api/units/" + rear).body().path("state").asText());
        assertEquals("v2", server.get("api/units/" + rear).body().path("photos").get(0).path("visit_id").asText());
        assertEquals("visit_given", lastChange(front).path("kind").asText());
        assertEquals("visit_taken", lastChange(rear).path("kind").asText());
        assertEquals(409, post("api/visits/v1/other-unit", "other_unit", rear, "new_id", "v3", "by", "Ines", "reason", "again").status());
    }

    private Answer photo(String visit, String id, byte[] bytes) {
        return server.send(HttpRequest.newBuilder(URI.create(server.address("api/visits/" + visit + "/photos?id=" + id + "&subject=plate&by=Ines")))
                .header("Content-Type", "image/png").POST(BodyPublishers.ofByteArray(bytes)));
    }

    @Test
    void aPhotoIsWhatItsBytesSay() {
        server.saveVisit(front, "v1", RunningServer.soundVisit("2026-07-18T11:30"));
        assertEquals(201, photo("v1", "p1", JPEG).status());
        assertEquals(200, photo("v1", "p1", JPEG).status(), "sending twice stores once");
        assertTrue(photo("v1", "p2", "<svg onload=alert(1)>".getBytes(java.nio.charset.StandardCharsets.UTF_8)).problemAt("photo")
                .contains("JPEG, PNG or WebP"));
        assertTrue(photo("v1", "p3", bigger(PhotoApi.MOST_BYTES)).problemAt("photo").contains("At most 2000 kB"));
        assertEquals(404, photo("v9", "p4", JPEG).status());
        Answer shown = server.get("api/photos/p1");
        assertEquals("image/jpeg", shown.response().headers().firstValue("Content-Type").orElse(""));
        assertEquals("nosniff", shown.response().headers().firstValue("X-Content-Type-Options").orElse(""));
        assertArrayEquals(JPEG, server.store.photos().bytes("p1").orElseThrow());
        JsonNode photos = server.get("api/units/" + front).body().path("photos");
        assertEquals(1, photos.size());
        assertEquals("plate", photos.get(0).path("subject").asText());
    }

    private static byte[] bigger(int than) {
        byte[] bytes = java.util.Arrays.copyOf(JPEG, than + 10);
        return bytes;
    }

    @Test
    void aPhotoIsTakenOutWithWhoAndWhyAndFollowsACorrection() {
        server.saveVisit(front, "v1", RunningServer.soundVisit("2026-07-18T11:30"));
        photo("v1", "p1", JPEG);
        Map<String, String> boxes = RunningServer.soundVisit("2026-07-18T11:30");
        boxes.put("reason", "amps");
        server.post("api/visits/v1/correction", Map.of("id", "v2", "boxes", boxes));
        assertEquals("v2", server.get("api/units/" + front).body().path("photos").get(0).path("visit_id").asText());
        assertEquals(2, server.post("api/photos/p1/removal", Map.of()).body().path("problems").size());
        assertEquals(200, server.post("api/photos/p1/removal", Map.of("by", "Otto", "reason", "a face in it")).status());
        assertEquals(404, server.get("api/photos/p1").status());
        JsonNode photo = server.get("api/units/" + front).body().path("photos").get(0);
        assertEquals("a face in it", photo.path("removal").path("reason").asText());
    }

    @Test
    void aDepotsClimateAndAltitudeJudgeItsUnitsAnew() {
        server.saveVisit(front, "v1", RunningServer.soundVisit("2026-07-18T11:30"));
        String before = server.get("api/units/" + front).body().path("standing").path("split").path("expected").path("text").asText();
        Answer saved = post("api/depots", "name", "Ferrow Flats", "altitude_ft", "7000", "time_zone", "America/Denver", "by", "Otto",
                "hours_6", "9", "hours_7", "12", "hours_8", "12", "opens_month", "6", "opens_day", "1", "closes_month", "8", "closes_day", "31");
        assertEquals(200, saved.status(), () -> saved.body().toString());
        assertEquals(1014, saved.body().path("run_hours_per_year").asInt(), "30 days of 9 h and 62 of 12 h");
        JsonNode page = server.get("api/units/" + front).body();
        assertFalse(before.equals(page.path("standing").path("split").path("expected").path("text").asText()));
        assertEquals("2027-06-01", page.path("next_check").path("on").asText(), "the season opens when the depot says");
        assertEquals(2, server.get("api/depots").body().path("depots").get(0).path("units").asInt());
        assertTrue(post("api/depots", "name", "Ferrow Flats", "time_zone", "Mars/Base", "hours_6", "25", "by", "Otto").body()
                .path("problems").size() >= 2);
        assertTrue(post("api/depots", "name", "Ferrow Flats", "hours_1", "0", "by", "Otto").problemAt("hours_1").contains("at least one month"));
    }

    @Test
    void runHoursAreWorkedOutFromTemperatures() {
        Map<String, String> boxes = new LinkedHashMap<>();
        for (int month = 1; month <= 12; month++) {
            boxes.put("mean_" + month + "_c", month == 7 ? "28" : "8");
        }
        JsonNode hours = server.post("api/depots/hours", Map.of("boxes", boxes)).body().path("boxes");
        assertEquals("12", hours.path("hours_7").asText(), "0.6 h for each kelvin above 8 °C");
        assertEquals("0", hours.path("hours_1").asText());
        boxes.remove("mean_3_c");
        assertTrue(server.post("api/depots/hours", Map.of("boxes", boxes)).problemAt("mean_3_f").contains("All twelve months"));
    }

    @Test
    void aVisitIsJudgedByTheInstrumentsOfWhoReads() {
        JsonNode page = server.get("api/technicians").body();
        assertEquals(0, page.path("technicians").size());
        assertEquals("thermometer", page.path("kinds").get(0).path("use").asText());
        Answer saved = post("api/technicians", "name", "Ines", "thermometer", "kitchen_thermometer", "ambient_thermometer", "digital_thermometer",
                "hygrometer", "digital_hygrometer", "clamp", "averaging_clamp", "voltmeter", "multimeter", "voltmeter_limit", "3");
        assertEquals(200, saved.status(), () -> saved.body().toString());
        assertEquals("3", saved.body().path("boxes").path("voltmeter_limit").asText());
        server.saveVisit(front, "v1", RunningServer.soundVisit("2026-07-18T11:30"));
        Instruments used = server.store.visits().current(front).get(0).instruments();
        assertEquals(1.2, used.probe().fahrenheit(), 1e-9);
        assertEquals(0.02, used.clampRelative(), 1e-12);
        assertEquals(3 / Math.sqrt(3), used.voltage().volts(), 1e-6);
        assertEquals(Instruments.DEFAULT.ambientProbe().fahrenheit(), used.ambientProbe().fahrenheit(), 1e-4);
        assertTrue(post("api/technicians", "thermometer", "clamp_meter").body().path("problems").size() >= 2);
    }

    @Test
    void theBusinessIsOnEveryPaper() {
        assertEquals("", server.get("api/business").body().path("name").asText());
        assertEquals(200, post("api/business", "name", "Ferrow Cooling", "address", "12 Mill Lane\nFerrow", "telephone", "555 0100",
                "licence_number", "R-4711").status());
        Answer logo = server.send(HttpRequest.newBuilder(URI.create(server.address("api/business/logo"))).POST(BodyPublishers.ofByteArray(JPEG)));
        assertEquals(200, logo.status());
        assertEquals("R-4711", server.get("api/business").body().path("licence_number").asText());
        assertEquals("image/jpeg", server.get("api/business/logo").response().headers().firstValue("Content-Type").orElse(""));
        assertTrue(server.delete("api/business/logo").body().path("logo").isMissingNode());
    }
}
