package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.longsummer.demo.DemoFleet;
import org.longsummer.web.RunningServer.Answer;
import org.longsummer.web.WebServer.Address;

/**
 * The API's description is that of the running server: every address is in it, and what it answers is what the description says, member
 * for member. {@code mvn test -Dtest=OpenApiTest -Dopenapi.write=true} writes {@code reference/openapi.json} anew.
 */
class OpenApiTest {
    private static final Path FILE = Path.of("reference", "openapi.json");
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final TurningClock CLOCK = new TurningClock("2026-11-20T18:00:00Z");
    /** Told what to do with otherwise in a test of its own, or no JSON. */
    private static final Set<String> NO_JSON = Set.of("/api/record", "/api/business/logo", "/api/units/{unit}/sticker.svg", "/api/photos/{photo}",
            "/api/units/{unit}/sheet.pdf", "/api/sheet.pdf", "/api/prices/file");
    private static RunningServer server;
    private static JsonNode document;

    @BeforeAll
    static void start() {
        server = new RunningServer(CLOCK);
        assertTrue(DemoFleet.load(server.store));
        document = server.get("api/openapi.json").body();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void theFileIsWhatTheServerSays() throws IOException {
        String said = server.get("api/openapi.json").response().body();
        if (Boolean.getBoolean("openapi.write")) {
            Files.writeString(FILE, said);
        }
        assertTrue(Files.exists(FILE) && Files.readString(FILE).equals(said),
                FILE + " is not what the server says; mvn test -Dtest=OpenApiTest -Dopenapi.write=true writes it anew");
    }

    @Test
    void everyAddressIsInItWithItsMethodAndWhatItNeeds() {
        int described = 0;
        for (Address address : server.server.addresses()) {
            JsonNode operation = document.path("paths").path(address.path()).path(address.method().toLowerCase(java.util.Locale.ROOT));
            assertEquals(OpenApi.isDescribed(address), !operation.isMissingNode(), address.toString());
            if (OpenApi.isDescribed(address)) {
                assertEquals(address.needs().name().toLowerCase(java.util.Locale.ROOT), operation.path("x-needs").asText(), address.toString());
                described++;
            }
        }
        int written = 0;
        for (JsonNode path : document.path("paths")) {
            written += path.size();
        }
        assertEquals(described, written, "nothing is in it that is not there");
        assertTrue(described > 60, "there are more");
    }

    @Test
    void whatIsSaidOfAddressesIsSaidOfOnesThatAreThere() {
        Set<String> laid = new TreeSet<>();
        server.server.addresses().forEach(address -> laid.add(address.method() + " " + address.path()));
        assertEquals(List.of(), ApiDescription.names().stream().filter(name -> !laid.contains(name)).toList());
    }

    private static String path(String path) {
        String visit = server.store.visits().current("FF-01").get(0).id();
        return path.replace("{unit}", "FF-01").replace("{visit}", visit);
    }

    /** A schema of the document that takes nothing besides what it names, so that no member goes undescribed. */
    private static JsonSchema strict(String pointer) {
        ObjectNode schema = document.deepCopy();
        for (JsonNode component : schema.path("components").path("schemas")) {
            if (component.has("properties")) {
                ((ObjectNode) component).put("additionalProperties", false);
            }
        }
        schema.put("$ref", pointer);
        schema.remove(List.of("openapi", "info"));
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema);
    }

    private static void check(String method, String path, Answer answer, List<String> wrong) {
        String status = document.path("paths").path(path).path(method).path("responses").has(Integer.toString(answer.status()))
                ? Integer.toString(answer.status()) : answer.status() < 300 ? "none" : "default";
        String pointer = "#/paths/" + path.replace("~", "~0").replace("/", "~1") + "/" + method + "/responses/" + status + "/content/application~1json/schema";
        if (document.at(pointer.substring(1)).isMissingNode()) {
            if (status.equals("none")) {
                wrong.add(method + " " + path + " answered " + answer.status() + ", which is not described");
            }
            return;
        }
        strict(pointer).validate(answer.body()).stream().limit(3).forEach(message -> wrong.add(method + " " + path + ": " + message.getMessage()));
    }

    @Test
    void whatEveryPageIsGivenIsWhatItSays() {
        List<String> wrong = new ArrayList<>();
        int checked = 0;
        for (Address address : server.server.addresses()) {
            boolean undescribed = ApiDescription.of(address.method(), address.path()).isEmpty();
            if (!OpenApi.isDescribed(address) || !address.method().equals("GET") || undescribed || NO_JSON.contains(address.path())
                    || address.needs() == Needs.SIGNED_IN || Stream.of("{handover}", "{round}", "{link}", "{plan}").anyMatch(address.path()::contains)) {
                continue;
            }
            check("get", address.path(), server.get(path(address.path()).substring(1)), wrong);
            checked++;
        }
        assertEquals(List.of(), wrong);
        assertTrue(checked >= 20, "only " + checked);
    }

    @Test
    void whatIsAnsweredToSomebodySignedInIsWhatItSays() {
        try (RunningServer other = new RunningServer(CLOCK)) {
            Staff staff = new Staff(other);
            List<String> wrong = new ArrayList<>();
            for (String path : List.of("/api/account", "/api/people", "/api/changes", "/api/session")) {
                Caller.Reply reply = staff.at(Staff.ADMINISTRATOR).get(path);
                check("get", path, new Answer(reply.status(), reply.body(), reply.response()), wrong);
            }
            Caller.Reply made = staff.at(Staff.ADMINISTRATOR).post("/api/account/programs",
                    Map.of("password", Staff.PASSWORD, "name", "shop system", "most", "visit", "days", 30));
            assertEquals(201, made.status());
            check("post", "/api/account/programs", new Answer(made.status(), made.body(), made.response()), wrong);
            assertEquals(List.of(), wrong);
        }
    }

    @Test
    void whatFormsAreAnsweredIsWhatItSays() {
        List<String> wrong = new ArrayList<>();
        try (RunningServer other = new RunningServer(CLOCK)) {
            Map<String, Object> unit = Map.of("boxes", Map.of("label", "Heron 8", "altitude_ft", "1230", "nominal_btuh", "13500"));
            Answer added = other.post("api/units", unit);
            check("post", "/api/units", added, wrong);
            String id = added.body().path("unit_id").asText();
            Map<String, Object> visit = Map.of("id", "v1", "boxes", RunningServer.soundVisit("2026-07-18T11:30"));
            check("post", "/api/units/{unit}/judge", other.post("api/units/" + id + "/judge", visit), wrong);
            check("post", "/api/units/{unit}/visits", other.post("api/units/" + id + "/visits", visit), wrong);
            check("post", "/api/units/{unit}/visits", other.post("api/units/" + id + "/visits", visit), wrong);
            check("get", "/api/visits/{visit}", other.get("api/visits/v1"), wrong);
            check("post", "/api/units/{unit}/form", other.post("api/units/" + id + "/form", Map.of("boxes", Map.of("label", "Heron 9", "by", "Moss",
                    "reason", "new name"))), wrong);
            check("post", "/api/visits/{visit}/withdrawal", other.post("api/visits/v1/withdrawal", Map.of("by", "Moss", "reason", "another van")), wrong);
        }
        assertEquals(List.of(), wrong);
    }

    /** Whatever goes wrong, wherever: one shape. */
    @Test
    void everyRefusalHasTheOneShape() {
        List<String> wrong = new ArrayList<>();
        int refused = 0;
        try (RunningServer other = new RunningServer(CLOCK)) {
            for (Address address : other.server.addresses()) {
                String path = address.path().replaceAll("\\{[^}]+}", "nothing").replace("*", "nothing");
                if (!address.path().startsWith("/api/")) {
                    continue;
                }
                Answer answer = address.method().equals("GET") ? other.get(path.substring(1)) : address.method().equals("DELETE")
                        ? other.delete(path.substring(1)) : other.post(path.substring(1), "{\"boxes\":");
                if (answer.status() >= 400) {
                    refused++;
                    assertTrue(answer.status() < 500, address + " answered " + answer.status());
                    strict("#/components/schemas/Problems").validate(answer.body()).forEach(message -> wrong.add(address + ": " + message.getMessage()));
                    assertFalse(answer.body().path("problems").isEmpty(), address.toString());
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(refused > 40, "only " + refused);
    }

    @Test
    void aMemberThatIsNotDescribedWouldBeSeen() throws IOException {
        JsonNode more = JSON.readTree("{\"problems\":[{\"field\":\"\",\"given\":\"\",\"limit\":\"\",\"remedy\":\"\",\"more\":1}]}");
        assertEquals(1, strict("#/components/schemas/Problems").validate(more).size());
    }
}
