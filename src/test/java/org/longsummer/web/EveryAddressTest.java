package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.longsummer.access.Reach;
import org.longsummer.access.Right;
import org.longsummer.store.VisitRound;
import org.longsummer.web.Caller.Reply;
import org.longsummer.web.WebServer.Address;

/** Every address there is, tried by everybody there is. The addresses are asked of the server, so that a new one is tried too. */
class EveryAddressTest {
    /** What the sides of each depot are called; nothing of the other's may come back from any address. */
    private static final String FOREIGN = "zzforeign";

    private final TurningClock clock = new TurningClock("2026-07-20T18:00:00Z");
    private RunningServer server;
    private Staff staff;
    private String ourUnit;
    private String theirUnit;

    @BeforeEach
    void start() {
        server = new RunningServer(clock);
        ourUnit = server.addUnit("Heron 7", Staff.OURS);
        theirUnit = server.addUnit(FOREIGN + " 9", FOREIGN + " yard");
        server.saveVisit(ourUnit, "ourvisit", RunningServer.soundVisit("2026-07-18T11:30"));
        Map<String, String> theirs = new LinkedHashMap<>(RunningServer.soundVisit("2026-07-18T12:30"));
        theirs.put("technician", FOREIGN + " hand");
        theirs.put("notes", FOREIGN + " note");
        server.saveVisit(theirUnit, FOREIGN + "visit", theirs);
        round("ourround", ourUnit, theirUnit);
        round(FOREIGN + "round", theirUnit);
        staff = new Staff(server);
    }

    private void round(String id, String... units) {
        server.store.rounds().make(new VisitRound(id, "", LocalDate.parse("2026-07-21"), "Ada Merrow", clock.instant()),
                server.store.standings().ofUnits(List.of(units), Reach.EVERYWHERE));
    }

    @AfterEach
    void stop() {
        server.close();
    }

    /** Somebody, fresh each time, and which needs he meets. */
    private record Who(String name, Supplier<Caller> caller, Set<Needs> meets) {}

    private List<Who> everybody() {
        return List.of(new Who("nobody", staff::nobody, Set.of()),
                new Who("owner with a link", () -> bearing("Sheet " + server.store.sheetLinks().make(ourUnit, "Moss").text()), Set.of(Needs.SHEET)),
                new Who("program that looks", () -> program(Right.SEE), Set.of(Needs.SHEET, Needs.SEE)),
                new Who("program of an administrator", () -> program(Right.ADMINISTER), Set.of(Needs.SHEET, Needs.SEE, Needs.VISIT, Needs.LOOK_AFTER)),
                new Who("technician", () -> staff.at("Ines Calder"), Set.of(Needs.SIGNED_IN, Needs.SHEET, Needs.SEE, Needs.VISIT)),
                new Who("technician's phone", () -> staff.onPhone("Ines Calder"), Set.of(Needs.SIGNED_IN, Needs.SHEET, Needs.SEE, Needs.VISIT)),
                new Who("manager", () -> staff.at("Moss Tarrin"),
                        Set.of(Needs.SIGNED_IN, Needs.SHEET, Needs.SEE, Needs.VISIT, Needs.LOOK_AFTER)),
                new Who("administrator's phone", () -> staff.onPhone(Staff.ADMINISTRATOR),
                        Set.of(Needs.SIGNED_IN, Needs.SHEET, Needs.SEE, Needs.VISIT, Needs.LOOK_AFTER)),
                new Who("administrator", () -> staff.at(Staff.ADMINISTRATOR),
                        Set.of(Needs.SIGNED_IN, Needs.SHEET, Needs.SEE, Needs.VISIT, Needs.LOOK_AFTER, Needs.ADMINISTER)));
    }

    private Caller program(Right most) {
        return bearing("Bearer " + server.store.programs().make(staff.person(Staff.ADMINISTRATOR).id(), "a program", most, Reach.EVERYWHERE,
                Duration.ofDays(1)).text());
    }

    private Caller bearing(String authorization) {
        return new Caller(server).with("Origin", null).with("Authorization", authorization);
    }

    private String path(Address address, Map<String, String> parts) {
        String path = address.path().replace("*", "nothing/here");
        for (Map.Entry<String, String> part : parts.entrySet()) {
            path = path.replace("{" + part.getKey() + "}", part.getValue());
        }
        assertFalse(path.contains("{"), "this test does not know what to put into " + path + "; say it in ours() and theirs()");
        return path;
    }

    private Map<String, String> ours() {
        return parts(ourUnit, "ourvisit", "ourround");
    }

    private Map<String, String> theirs() {
        return parts(theirUnit, FOREIGN + "visit", FOREIGN + "round");
    }

    private static Map<String, String> parts(String unit, String visit, String round) {
        Map<String, String> parts = new HashMap<>(Map.of("unit", unit, "visit", visit, "round", round, "person", "nobody"));
        List.of("photo", "plan", "session", "program", "link", "handover").forEach(part -> parts.put(part, "none"));
        return parts;
    }

    private static Reply ask(Caller caller, Address address, String path) {
        return caller.send(address.method(), path, address.method().equals("POST") || address.method().equals("PUT") ? "{}" : null);
    }

    @Test
    void everyAddressAsksWhatItSaysItNeeds() {
        Map<Needs, Integer> tried = new EnumMap<>(Needs.class);
        List<String> wrong = new ArrayList<>();
        for (Address address : server.server.addresses()) {
            tried.merge(address.needs(), 1, Integer::sum);
            for (Who who : everybody()) {
                Reply reply = ask(who.caller().get(), address, path(address, ours()));
                boolean letIn = reply.status() != 401 && reply.status() != 403 || reply.text().contains("Name and password");
                boolean expected = address.needs() == Needs.NOTHING || who.meets().contains(address.needs());
                boolean rightRefusal = letIn || reply.status() == (who.name().equals("nobody") ? 401 : 403);
                if (letIn != expected && !isOthersVisit(address, who) || !rightRefusal) {
                    wrong.add(address + " answered " + reply.status() + " to the " + who.name());
                }
            }
        }
        assertTrue(wrong.isEmpty(), () -> String.join("\n", wrong));
        assertTrue(tried.size() == Needs.values().length && tried.get(Needs.SEE) > 5, tried::toString);
    }

    /** Whoever may enter visits may correct his own only, and this one is somebody else's. */
    private static boolean isOthersVisit(Address address, Who who) {
        return address.path().startsWith("/api/visits/{visit}/") && !who.meets().contains(Needs.LOOK_AFTER) && who.meets().contains(Needs.VISIT);
    }

    /** The other depot's units, visits, people and counts come back from no address, by whatever way they are asked for. */
    @Test
    void nothingOfAnotherDepotComesBackFromAnyAddress() {
        List<String> leaks = new ArrayList<>();
        int tried = 0;
        for (String name : List.of("Ines Calder", "Moss Tarrin")) {
            for (Address address : server.server.addresses()) {
                if (address.needs() == Needs.NOTHING) {
                    continue;
                }
                for (Map<String, String> parts : List.of(ours(), theirs())) {
                    String path = path(address, parts);
                    for (String query : List.of("", "?text=" + FOREIGN, "?depot=" + FOREIGN + "%20yard", "?text=SO1-5I&depot=" + FOREIGN + "%20yard")) {
                        Reply reply = ask(staff.at(name), address, path + query);
                        tried++;
                        String told = reply.text().replace(theirUnit, "").replace(FOREIGN + "visit", "").replace(FOREIGN + "round", "");
                        if (told.contains(FOREIGN)) {
                            leaks.add(name + " at " + address.method() + " " + path + query + ": " + told);
                        }
                        if (parts.equals(theirs()) && (address.path().contains("{unit}") || address.path().contains("{visit}") || address.path().contains("{round}"))
                                && reply.status() != 404 && reply.status() != 403) {
                            leaks.add(name + " at " + address.method() + " " + path + query + " answered " + reply.status());
                        }
                    }
                }
            }
        }
        assertTrue(leaks.isEmpty(), () -> String.join("\n", leaks));
        assertTrue(tried > 200, "too few were tried");
        assertTrue(staff.at(Staff.ADMINISTRATOR).get("/api/yard?text=" + FOREIGN).text().contains(FOREIGN), "the test can see a leak");
    }

    /** What lies beyond is answered like what is not there, word for word. */
    @Test
    void whatLiesBeyondIsAnsweredLikeWhatIsNotThere() {
        for (Address address : server.server.addresses()) {
            for (String part : List.of("unit", "visit", "round")) {
                if (address.method().equals("GET") && address.path().contains("{" + part + "}") && address.needs() != Needs.NOTHING) {
                    Map<String, String> missing = new LinkedHashMap<>(theirs());
                    missing.put("unit", "nowhere");
                    missing.put("visit", "nowhere");
                    missing.put("round", "nowhere");
                    Caller moss = staff.at("Moss Tarrin");
                    Reply beyond = moss.get(path(address, theirs()));
                    Reply absent = moss.get(path(address, missing));
                    assertEquals(absent.status(), beyond.status(), address.path());
                    assertEquals(absent.text().replace("nowhere", "X"), beyond.text().replace(theirs().get(part), "X"), address.path());
                }
            }
        }
    }

    @Test
    void anAddressThatSaysNotWhatItNeedsKeepsTheServerFromStarting() {
        assertThrows(IllegalStateException.class, () -> io.javalin.Javalin.create(config -> {
            config.routes.get("/api/forgotten", request -> request.result("all of it"));
            new Doorkeeper(server.store, Front.LOCAL, new Cookies(Front.LOCAL)).inspect(config.unsafe.internalRouter);
        }));
        assertThrows(IllegalStateException.class, () -> io.javalin.Javalin.create(config -> {
            config.routes.get("/api/parts/{part}", request -> request.result("whose?"), Needs.SEE);
            new Doorkeeper(server.store, Front.LOCAL, new Cookies(Front.LOCAL)).inspect(config.unsafe.internalRouter);
        }));
    }

    /** Other methods, other spellings: no way round. */
    @Test
    void noSpellingOfAnAddressLeadsRoundTheDoor() {
        String unit = "/api/units/" + ourUnit;
        for (String path : List.of("/api/yard/", "/api//yard", "//api/yard", "/api/./yard", "/API/yard", "/api/yard;x=1", "/api/yard%2f", "/api%2fyard",
                "/yard/../api/yard", "/api/yard?", unit + "/", unit + "//", "/web/../api/yard", "/u/../api/yard", "/api/house;/yard")) {
            for (String method : List.of("GET", "HEAD", "OPTIONS", "PUT", "PATCH", "DELETE", "TRACE", "QUERY")) {
                Reply reply = staff.nobody().send(method, path, null);
                assertNotEquals(200, reply.status(), method + " " + path);
                assertFalse(reply.text().contains("Heron"), method + " " + path);
            }
        }
    }

    @Test
    void anOwnersLinkOpensOneSheetAndIsWithdrawn() {
        Caller ines = staff.at("Ines Calder");
        String address = ines.post("/api/units/" + ourUnit + "/sheet-links", "{}").body().path("address").asText();
        String key = address.substring(address.indexOf('#') + 1);
        assertTrue(key.length() >= 43, "256 bits: " + key);
        assertEquals(ourUnit, bearing("Sheet " + key).get("/api/sheet").body().path("unit_id").asText());
        for (String path : List.of("/api/yard", "/api/units/" + ourUnit, "/api/units/" + theirUnit, "/api/house", "/api/visits/ourvisit")) {
            assertEquals(403, bearing("Sheet " + key).get(path).status(), path);
        }
        String list = ines.get("/api/units/" + ourUnit + "/sheet-links").text();
        assertFalse(list.contains(key), "it is told once");
        String id = ines.get("/api/units/" + ourUnit + "/sheet-links").body().path("links").get(0).path("id").asText();
        assertEquals(404, staff.at("Quill Danner").delete("/api/units/" + ourUnit + "/sheet-links/" + id).status());
        assertEquals(404, staff.at(Staff.ADMINISTRATOR).delete("/api/units/" + theirUnit + "/sheet-links/" + id).status(), "of another unit");
        assertEquals(200, ines.delete("/api/units/" + ourUnit + "/sheet-links/" + id).status());
        assertEquals(401, bearing("Sheet " + key).get("/api/sheet").status());
        String another = ines.post("/api/units/" + ourUnit + "/sheet-links", "{}").body().path("address").asText();
        clock.turn(Duration.ofDays(366));
        assertEquals(401, bearing("Sheet " + another.substring(another.indexOf('#') + 1)).get("/api/sheet").status(), "it ends by itself");
    }

    @Test
    void aProgramDoesWhatItMayAndNoMoreThanItsPerson() {
        Caller moss = staff.at("Moss Tarrin");
        Reply made = moss.post("/api/account/programs", Map.of("password", Staff.PASSWORD, "name", "shop system", "most", "look_after",
                "depots", List.of(Staff.OURS, FOREIGN + " yard"), "days", 30));
        assertEquals(201, made.status(), made.text());
        String key = made.body().path("key").asText();
        assertTrue(key.startsWith("lsp_"), key);
        Caller program = bearing("Bearer " + key);
        assertEquals(200, program.get("/api/units/" + ourUnit).status());
        assertEquals(404, program.get("/api/units/" + theirUnit).status(), "its person does not see it either");
        assertEquals(403, program.get("/api/account").status(), "an account is for the person himself");
        assertFalse(moss.get("/api/account").text().contains(key), "it is told once");
        staff.at(Staff.ADMINISTRATOR).post("/api/people/" + staff.person("Moss Tarrin").id(), Map.of("role", "technician", "depots", List.of(Staff.OURS)));
        assertEquals(403, program.post("/api/import", "{}").status(), "nor any more than he may by now");
        String id = moss.get("/api/account").body().path("programs").get(0).path("id").asText();
        assertEquals(404, staff.at("Ines Calder").delete("/api/account/programs/" + id).status());
        assertEquals(200, moss.delete("/api/account/programs/" + id).status());
        assertEquals(401, program.get("/api/yard").status());
        String brief = staff.at("Moss Tarrin").post("/api/account/programs",
                Map.of("password", Staff.PASSWORD, "name", "brief", "most", "see", "days", 1)).body().path("key").asText();
        clock.turn(Duration.ofHours(25));
        assertEquals(401, bearing("Bearer " + brief).get("/api/yard").status(), "it ended");
    }

    @Test
    void whoSavedAVisitCorrectsItAndAManagerDoes() {
        Map<String, Object> visit = Map.of("id", "fresh", "boxes", RunningServer.soundVisit("2026-07-19T11:30"));
        assertEquals(201, staff.at("Ines Calder").post("/api/units/" + ourUnit + "/visits", visit).status());
        assertEquals("Ines Calder", server.store.visits().find("fresh").orElseThrow().entry().savedBy());
        Map<String, Object> reason = Map.of("reason", "it was the other unit", "by", "somebody else's name");
        assertEquals(403, staff.at("Otto Brandt").post("/api/visits/fresh/withdrawal", reason).status());
        assertEquals(403, staff.at("Otto Brandt").post("/api/visits/fresh/correction", "{}").status());
        assertEquals(422, staff.at("Ines Calder").post("/api/visits/fresh/correction", Map.of("id", "next", "boxes", Map.of())).status());
        assertEquals(200, staff.at("Moss Tarrin").post("/api/visits/fresh/withdrawal", reason).status());
        assertEquals(Optional.of("Moss Tarrin"), server.store.visits().find("fresh").orElseThrow().withdrawal().map(w -> w.by()),
                "who is signed in, whatever was typed");
    }

    @Test
    void aUnitIsPutOnlyWhereOneSeesIt() {
        Map<String, Object> elsewhere = Map.of("boxes", Map.of("label", "Heron 8", "site", FOREIGN + " yard"));
        Map<String, Object> nowhere = Map.of("boxes", Map.of("label", "Heron 8"));
        for (Map<String, Object> form : List.of(elsewhere, nowhere)) {
            Reply reply = staff.at("Ines Calder").post("/api/units", form);
            assertEquals(422, reply.status());
            assertEquals("site", reply.body().path("problems").get(0).path("field").asText());
        }
        assertEquals(201, staff.at("Ines Calder").post("/api/units", Map.of("boxes", Map.of("label", "Heron 8", "site", Staff.OURS))).status());
        assertEquals(201, staff.at(Staff.ADMINISTRATOR).post("/api/units", nowhere).status());
    }
}
