package org.longsummer.web;

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
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import org.longsummer.demo.DemoFleet;
import org.longsummer.store.Store;

/** A server with a real record in a directory of its own, on a free port of this machine, asked over real HTTP. */
final class RunningServer implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();

    final Store store;
    final WebServer server;
    private final HttpClient client = HttpClient.newHttpClient();

    RunningServer(Clock clock) {
        this(clock, Front.LOCAL);
    }

    RunningServer(Clock clock, Front front) {
        this(newDirectory(), clock, front);
    }

    RunningServer(Path directory, Clock clock, Front front) {
        store = Store.open(directory, clock);
        server = new WebServer(store, clock, DemoFleet::load, front).start("127.0.0.1", 0);
    }

    private static Path newDirectory() {
        try {
            Path directory = Files.createTempDirectory("longsummer-test");
            directory.toFile().deleteOnExit();
            return directory;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String address(String path) {
        return "http://127.0.0.1:" + server.port() + "/" + path;
    }

    /** What came back: status and, where it is JSON, the body. */
    record Answer(int status, JsonNode body, HttpResponse<String> response) {
        String problemAt(String field) {
            for (JsonNode problem : body.path("problems")) {
                if (problem.path("field").asText().equals(field)) {
                    return problem.path("given").asText() + "|" + problem.path("limit").asText() + "|" + problem.path("remedy").asText();
                }
            }
            return "";
        }
    }

    Answer get(String path) {
        return send(HttpRequest.newBuilder(URI.create(address(path))).GET());
    }

    /** What a file holds. */
    byte[] bytes(String path) {
        try {
            return client.send(HttpRequest.newBuilder(URI.create(address(path))).build(), BodyHandlers.ofByteArray()).body();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    Answer post(String path, Object body) {
        try {
            return send(HttpRequest.newBuilder(URI.create(address(path))).header("Content-Type", "application/json")
                    .POST(BodyPublishers.ofString(body instanceof String text ? text : JSON.writeValueAsString(body))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Answer delete(String path) {
        return send(HttpRequest.newBuilder(URI.create(address(path))).DELETE());
    }

    /** Sends files as a browser's form does. */
    Answer upload(Map<String, String> contents) {
        StringBuilder body = new StringBuilder();
        contents.forEach((name, content) -> body.append("--edge\r\nContent-Disposition: form-data; name=\"").append(name)
                .append("\"; filename=\"").append(name).append(".csv\"\r\nContent-Type: text/csv\r\n\r\n").append(content).append("\r\n"));
        return send(HttpRequest.newBuilder(URI.create(address("api/import"))).header("Content-Type", "multipart/form-data; boundary=edge")
                .POST(BodyPublishers.ofString(body + "--edge--\r\n")));
    }

    Answer send(HttpRequest.Builder request) {
        try {
            HttpResponse<String> response = client.send(request.build(), BodyHandlers.ofString());
            boolean json = response.headers().firstValue("Content-Type").orElse("").contains("json");
            return new Answer(response.statusCode(), json ? JSON.readTree(response.body()) : JSON.nullNode(), response);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Adds a unit by its form and answers its id. */
    String addUnit(String label, String depot) {
        Answer answer = post("api/units", Map.of("boxes", boxes("label", label, "site", depot, "altitude_ft", "1,230", "make", "Nimbell",
                "model", "NB-135", "serial", "SO1-5I", "nominal_btuh", "13,500", "rated_amps", "12.4", "rated_amps_kind", "input",
                "rated_volts", "115", "air_delivery", "non_ducted")));
        if (answer.status() != 201) {
            throw new IllegalStateException(answer.body().toString());
        }
        return answer.body().path("unit_id").asText();
    }

    /** The boxes of a visit whose readings a sound unit shows. */
    static Map<String, String> soundVisit(String visitedAt) {
        return boxes("visited_at", visitedAt, "utc_offset_minutes", "-360", "technician", "Ines", "return_db_f", "78.0",
                "return_rh_pct", "50", "supply_db_f", "57,5", "supply_at", "discharge", "ambient_db_f", "92", "ambient_at", "inlet",
                "amps", "12.1", "volts", "117", "run_minutes", "18", "fan_speed", "high");
    }

    /** Names and texts of boxes, by turns. */
    private static Map<String, String> boxes(String... namesAndTexts) {
        Map<String, String> boxes = new LinkedHashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            boxes.put(namesAndTexts[i], namesAndTexts[i + 1]);
        }
        return boxes;
    }

    Answer saveVisit(String unitId, String visitId, Map<String, String> boxes) {
        return post("api/units/" + unitId + "/visits", Map.of("id", visitId, "boxes", boxes));
    }

    @Override
    public void close() {
        server.close();
        store.close();
    }
}
