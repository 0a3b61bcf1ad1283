package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.longsummer.web.RunningServer.Answer;

/** Files that are handed over step by step, and in one request by programs. */
class HandoverApiTest {
    private final TurningClock clock = new TurningClock("2026-08-20T18:00:00Z");
    private RunningServer server;

    @BeforeEach
    void start() {
        server = new RunningServer(clock);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private Answer send(String path, Map<String, String> files, Map<String, String> fields) {
        StringBuilder body = new StringBuilder();
        files.forEach((name, content) -> body.append("--edge\r\nContent-Disposition: form-data; name=\"files\"; filename=\"").append(name)
                .append("\"\r\nContent-Type: text/csv\r\n\r\n").append(content).append("\r\n"));
        fields.forEach((name, content) -> body.append("--edge\r\nContent-Disposition: form-data; name=\"").append(name).append("\"\r\n\r\n").append(content)
                .append("\r\n"));
        return server.send(HttpRequest.newBuilder(URI.create(server.address(path))).header("Content-Type", "multipart/form-data; boundary=edge")
                .POST(BodyPublishers.ofString(body + "--edge--\r\n")));
    }

    private JsonNode settled(String handover) throws InterruptedException {
        for (int i = 0; i < 600; i++) {
            JsonNode view = server.get("api/handovers/" + handover).body();
            if (!view.path("state").asText().matches("looking|taking|stopping")) {
                return view;
            }
            Thread.sleep(50);
        }
        throw new AssertionError("it never ended");
    }

    @Test
    void aProgramIsAskedTriesAndBrings() {
        Map<String, String> units = Map.of("u.csv", "unit_id;nominal_btuh\nHERON-7;13,500\n");
        Answer asked = send("api/import", units, Map.of());
        assertEquals(422, asked.status(), asked.body().toString());
        assertEquals("u.csv, decimal|13,500", asked.body().at("/problems/0/field").asText() + "|" + asked.body().at("/problems/0/given").asText());
        assertEquals("Send decimal = point or decimal = comma.", asked.body().at("/problems/0/remedy").asText());
        Answer tried = send("api/import", units, Map.of("decimal", "point", "try", "yes"));
        assertEquals(1, tried.body().at("/counts/new").asInt(), tried.body().toString());
        assertEquals(0, server.store.units().count());
        assertEquals(1, send("api/import", units, Map.of("decimal", "point")).body().path("units_added").asInt());
    }

    @Test
    void whatIsStoppedIsNotThereAndNobodyElseComesToIt() throws InterruptedException {
        StringBuilder many = new StringBuilder("unit_id,label\n");
        for (int i = 0; i < 20_000; i++) {
            many.append('u').append(i).append(",Unit ").append(i).append('\n');
        }
        String handover = send("api/handovers", Map.of("many.csv", many.toString()), Map.of()).body().path("handover").asText();
        JsonNode tried = settled(handover);
        assertEquals("tried|20000", tried.path("state").asText() + "|" + tried.at("/counts/new").asText());
        assertEquals(Tried.TOLD, tried.path("rows").size());
        assertEquals(202, server.post("api/handovers/" + handover + "/taking", "{}").status());
        assertEquals(200, server.delete("api/handovers/" + handover).status());
        String ended = settled(handover).path("state").asText();
        assertEquals(ended.equals("stopped") ? 0 : 20_000, server.store.units().count(), "wholly or not at all: " + ended);
        assertEquals(409, server.post("api/handovers/" + handover + "/taking", "{}").status());
        assertEquals(404, server.get("api/handovers/another").status());
    }

    @Test
    void onlyWhoeverHandedThemOverComesToThem() {
        Staff staff = new Staff(server);
        server.store.people();
        Answer nobody = server.get("api/handovers/none");
        assertEquals(401, nobody.status());
        assertEquals(404, staff.at("Moss Tarrin").get("/api/handovers/none").status());
        assertEquals(403, staff.at("Ines Calder").get("/api/handovers/none").status());
        assertTrue(staff.at("Moss Tarrin").post("/api/handovers", "{}").status() == 422);
    }
}
