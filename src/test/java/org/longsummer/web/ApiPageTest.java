package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The commands of {@code reference/api.md}, in their order, against a running server. Each is taken apart here and sent over HTTP, so that
 * the test needs no other program; an option that it does not know fails it.
 */
class ApiPageTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Pattern BLOCK = Pattern.compile("```sh\n(.*?)\n```", Pattern.DOTALL);
    private static final Pattern WORD = Pattern.compile("'([^']*)'|\"([^\"]*)\"|(\\S+)");
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @TempDir
    Path directory;
    private final Map<String, String> variables = new HashMap<>();

    @Test
    void thePagesCommandsDoWhatItSays() throws IOException, InterruptedException {
        Files.writeString(directory.resolve("units.csv"), "unit_id,label\nWREN-2,Wren 2\n");
        try (RunningServer server = new RunningServer(new TurningClock("2026-07-20T18:00:00Z"))) {
            Staff staff = new Staff(server);
            String key = staff.at(Staff.ADMINISTRATOR).post("/api/account/programs", Map.of("password", Staff.PASSWORD, "name", "shop system",
                    "most", "look_after", "days", 30)).body().path("key").asText();
            variables.put("SERVER", server.address("").replaceFirst("/$", ""));
            variables.put("KEY", key);
            List<String> commands = BLOCK.matcher(Files.readString(Path.of("reference", "api.md"))).results().map(block -> block.group(1)).toList();
            assertEquals(5, commands.size());
            variables.put("UNIT", run(commands.get(0)).path("unit_id").asText());
            assertTrue(!variables.get("UNIT").isEmpty());
            JsonNode saved = run(commands.get(1));
            assertEquals("shop-4711|false", saved.path("visit_id").asText() + "|" + saved.path("stored_before").asText());
            assertTrue(run(commands.get(1)).path("stored_before").asBoolean(), "sending it twice stores it once");
            JsonNode read = run(commands.get(2));
            assertEquals(saved.at("/verdict/state"), read.at("/verdict/state"));
            assertTrue(!read.at("/verdict/state").isMissingNode(), read.toString());
            JsonNode yard = run(commands.get(3));
            assertEquals(variables.get("UNIT"), yard.at("/rows/0/unit_id").asText(), yard.toString());
            assertEquals(1, run(commands.get(4)).at("/counts/new").asInt());
            assertEquals(1, server.store.units().count(), "trying changes nothing");
        }
    }

    private JsonNode run(String command) throws IOException, InterruptedException {
        List<String> words = words(command);
        assertEquals(List.of("curl", "-s"), words.subList(0, 2), command);
        HttpRequest.Builder request = HttpRequest.newBuilder();
        List<String> form = new ArrayList<>();
        String body = "";
        for (int i = 2; i < words.size(); i++) {
            switch (words.get(i)) {
                case "-H" -> header(request, words.get(++i));
                case "-d" -> body = words.get(++i);
                case "-F" -> form.add(words.get(++i));
                default -> {
                    assertTrue(words.get(i).startsWith("http"), "this test does not know " + words.get(i));
                    request.uri(URI.create(words.get(i)));
                }
            }
        }
        if (!form.isEmpty()) {
            request.header("Content-Type", "multipart/form-data; boundary=edge");
            body = multipart(form);
        }
        var answer = CLIENT.send(body.isEmpty() ? request.GET().build() : request.POST(BodyPublishers.ofString(body)).build(), BodyHandlers.ofString());
        assertTrue(answer.statusCode() < 300, command + "\n" + answer.statusCode() + " " + answer.body());
        return JSON.readTree(answer.body());
    }

    private static void header(HttpRequest.Builder request, String line) {
        String[] parts = line.split(": ", 2);
        request.header(parts[0], parts[1]);
    }

    private String multipart(List<String> form) throws IOException {
        StringBuilder body = new StringBuilder();
        for (String field : form) {
            String[] parts = field.split("=", 2);
            boolean file = parts[1].startsWith("@");
            body.append("--edge\r\nContent-Disposition: form-data; name=\"").append(parts[0]).append('"')
                    .append(file ? "; filename=\"" + parts[1].substring(1) + "\"\r\nContent-Type: text/csv" : "").append("\r\n\r\n")
                    .append(file ? Files.readString(directory.resolve(parts[1].substring(1))) : parts[1]).append("\r\n");
        }
        return body + "--edge--\r\n";
    }

    /** As a shell takes a line apart: single quotes as they stand, double ones with variables. */
    private List<String> words(String command) {
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(command);
        while (matcher.find()) {
            words.add(matcher.group(1) != null ? matcher.group(1) : filled(matcher.group(2) != null ? matcher.group(2) : matcher.group(3)));
        }
        return words;
    }

    private String filled(String text) {
        return Pattern.compile("\\$([A-Z]+)").matcher(text).replaceAll(name -> Matcher.quoteReplacement(variables.get(name.group(1))));
    }
}
