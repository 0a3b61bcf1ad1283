package org.longsummer.endurance;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;

/** Somebody who asks a server over HTTP. An answer that does not come in time is an error, so that nothing hangs unseen. */
final class Caller {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Duration PATIENCE = Duration.ofSeconds(90);

    private final String address;
    private final HttpClient client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    Caller(String address) {
        this.address = address;
    }

    /** What came back. */
    record Answer(int status, String text) {
        JsonNode json() {
            try {
                return JSON.readTree(text);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** The connection ended without an answer: whether it was carried out is not known. */
    static final class NoAnswer extends RuntimeException {
        private static final long serialVersionUID = 1;

        NoAnswer(IOException cause) {
            super(cause);
        }
    }

    Answer get(String path) {
        return send(request(path).GET());
    }

    Answer post(String path, Object body) {
        try {
            return send(request(path).header("Content-Type", "application/json").POST(BodyPublishers.ofString(JSON.writeValueAsString(body))));
        } catch (com.fasterxml.jackson.core.JacksonException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** Sends files as a browser's form does, by the names of their boxes. */
    Answer upload(Map<String, String> files) {
        StringBuilder body = new StringBuilder();
        files.forEach((name, content) -> body.append("--edge\r\nContent-Disposition: form-data; name=\"").append(name)
                .append("\"; filename=\"").append(name).append(".csv\"\r\nContent-Type: text/csv\r\n\r\n").append(content).append("\r\n"));
        return send(request("/api/import").header("Content-Type", "multipart/form-data; boundary=edge")
                .POST(BodyPublishers.ofString(body + "--edge--\r\n")));
    }

    HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(address + path)).timeout(PATIENCE);
    }

    Answer send(HttpRequest.Builder request) {
        try {
            HttpResponse<String> response = client.send(request.build(), BodyHandlers.ofString());
            return new Answer(response.statusCode(), response.body());
        } catch (IOException e) {
            throw new NoAnswer(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Adds a unit of a usual size and answers its id. */
    String addUnit(String label) {
        Answer answer = post("/api/units", Map.of("boxes", boxes("label", label, "site", "Ferrow Flats", "altitude_ft", "1,230",
                "nominal_btuh", "13,500", "rated_amps", "12.4", "rated_amps_kind", "input", "rated_volts", "115")));
        if (answer.status() != 201) {
            throw new IllegalStateException(answer.toString());
        }
        return answer.json().path("unit_id").asText();
    }

    /** Saves a visit whose readings a sound unit shows. */
    Answer saveVisit(String unitId, String visitId, String visitedAt) {
        return post("/api/units/" + unitId + "/visits", Map.of("id", visitId, "boxes", soundVisit(visitedAt)));
    }

    static Map<String, String> soundVisit(String visitedAt) {
        return boxes("visited_at", visitedAt, "utc_offset_minutes", "0", "technician", "Ines", "return_db_f", "78.0", "return_rh_pct", "50",
                "supply_db_f", "57.5", "supply_at", "discharge", "ambient_db_f", "92", "ambient_at", "inlet", "amps", "12.1", "volts", "117",
                "run_minutes", "18", "fan_speed", "high");
    }

    /** Names and texts of boxes, by turns. */
    static Map<String, String> boxes(String... namesAndTexts) {
        Map<String, String> boxes = new LinkedHashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            boxes.put(namesAndTexts[i], namesAndTexts[i + 1]);
        }
        return boxes;
    }
}
