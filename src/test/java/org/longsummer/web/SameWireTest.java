package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.visit.InstrumentKind;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.phone.Door;
import org.longsummer.phone.OpenedUnit;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.Voltage;
import org.longsummer.store.Toolkit;

/** The phone's door answers in the very shape of the server, from what the server gives a phone: members, words and numbers. */
class SameWireTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Instant NOW = Instant.parse("2026-07-02T18:00:00Z");

    private RunningServer server;
    private String unit;

    @BeforeEach
    void fillRecord() {
        server = new RunningServer(Clock.fixed(NOW, ZoneOffset.UTC));
        unit = server.addUnit("Heron 7", "Ferrow Flats");
        for (int month = 4; month < 7; month++) {
            Map<String, String> boxes = new HashMap<>(RunningServer.soundVisit("2026-0" + month + "-11T14:05"));
            boxes.put("amps", month == 6 ? "14.9" : "12.1");
            boxes.put("volts_off", "119");
            assertEquals(201, server.saveVisit(unit, "v" + month, boxes).status());
        }
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private OpenedUnit opened() throws JsonProcessingException {
        JsonNode given = server.get("api/offline/units/" + unit).body();
        ObjectNode opening = JSON.createObjectNode().put("now_ms", NOW.toEpochMilli());
        opening.set("unit", given.path("units").path(0).path("unit"));
        opening.set("visits", given.path("units").path(0).path("visits"));
        opening.set("closings", given.path("closings"));
        opening.set("instruments", given.path("instruments"));
        return Door.open(JSON.writeValueAsString(opening));
    }

    private void compare(Map<String, String> boxes, String system) throws JsonProcessingException {
        JsonNode server = this.server.post("api/units/" + unit + "/judge?system=" + system, Map.of("id", "draft", "boxes", boxes)).body();
        JsonNode phone = JSON.readTree(opened().judge(JSON.writeValueAsString(
                Map.of("id", "draft", "boxes", boxes, "system", system, "now_ms", NOW.toEpochMilli()))));
        assertEquals(server, phone);
    }

    @Test
    void aDraftIsAnsweredAlike() throws JsonProcessingException {
        for (String amps : List.of("", "12.1", "15.6", "0.1", "1x")) {
            Map<String, String> boxes = new HashMap<>(RunningServer.soundVisit("2026-07-02T11:40"));
            boxes.put("amps", amps);
            compare(boxes, "us");
            compare(boxes, "si");
        }
        compare(Map.of(), "us");
    }

    @Test
    void aTechniciansOwnInstrumentsAreTakenAlong() throws JsonProcessingException {
        Instruments fine = new Instruments(TemperatureDifference.fahrenheit(0.2), TemperatureDifference.fahrenheit(0.2), RelativeHumidity.percent(1),
                0.005, new Current(0.02), new Voltage(0.3), false);
        server.store.technicians().save(new Toolkit("Ines", InstrumentKind.values()[0], InstrumentKind.values()[0], InstrumentKind.values()[0],
                InstrumentKind.values()[0], InstrumentKind.values()[0], fine));
        compare(RunningServer.soundVisit("2026-07-02T11:40"), "us");
    }

    @Test
    void theLastVisitComesAsItWasTyped() throws JsonProcessingException {
        JsonNode last = JSON.readTree(opened().visit("{\"system\":\"us\"}"));
        assertEquals("v6", last.path("id").asText());
        assertEquals("57,5", last.path("boxes").path("supply_db_f").asText());
        assertEquals("119", last.path("boxes").path("volts_off").asText());
        assertEquals(server.get("api/visits/v6?system=us").body().path("visit").path("boxes"), last.path("boxes"));
    }
}
