package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.longsummer.access.Reach;
import org.longsummer.access.Role;
import org.longsummer.store.Sessions;
import org.longsummer.web.Caller.Reply;

/** Coming in and going out, over real HTTP with a real record and a clock that the test turns. */
class SignInTest {
    private static final String INES = "Ines Calder";

    private final TurningClock clock = new TurningClock("2026-07-20T18:00:00Z");
    private RunningServer server;
    private Staff staff;

    @BeforeEach
    void start() {
        server = new RunningServer(clock);
        staff = new Staff(server);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private Reply yard(Caller caller) {
        return caller.get("/api/yard");
    }

    @Test
    void whoHasAnAccountComesInAndWhoHasNoneDoesNot() {
        assertEquals(401, yard(staff.nobody()).status());
        Caller ines = new Caller(server);
        Reply reply = ines.signIn("  ines   CALDER ", Staff.PASSWORD);
        assertEquals(200, reply.status());
        assertEquals(INES, reply.body().path("name").asText());
        assertEquals("[\"see\",\"visit\"]", reply.body().path("rights").toString());
        assertEquals(200, yard(ines).status());
        assertEquals(INES, ines.get("/api/session").body().path("name").asText());
    }

    @Test
    void theCookieIsStrict() {
        String cookie = new Caller(server).signIn(INES, Staff.PASSWORD).header("Set-Cookie").orElseThrow();
        for (String part : List.of("HttpOnly", "SameSite=Strict", "Path=/")) {
            assertTrue(cookie.contains(part), cookie);
        }
        assertFalse(cookie.contains("Domain"), cookie);
        assertFalse(cookie.contains("Max-Age"), "a browser's session ends with the browser: " + cookie);
    }

    /** A key that somebody planted in the browser before is not the one that is signed in. */
    @Test
    void signingInMakesANewKeyAndEndsTheEarlierSession() {
        Caller planted = new Caller(server).withCookie("longsummer", "planted-by-somebody-else");
        planted.signIn(INES, Staff.PASSWORD);
        String first = planted.cookies().get("longsummer");
        assertNotEquals("planted-by-somebody-else", first);
        assertEquals(401, yard(new Caller(server).withCookie("longsummer", "planted-by-somebody-else")).status());
        planted.signIn(INES, Staff.PASSWORD);
        assertNotEquals(first, planted.cookies().get("longsummer"));
        assertEquals(401, yard(new Caller(server).withCookie("longsummer", first)).status(), "the earlier session is over");
    }

    /** The same answer to a wrong password, an unknown name, and a closed account; see PasswordsTest for the same work. */
    @Test
    void aRefusalTellsNotWhoHasAnAccount() {
        server.store.people().close(staff.person("Otto Brandt").id());
        server.store.people().add("Nell Ashby", Role.TECHNICIAN, Reach.EVERYWHERE);
        Reply wrong = new Caller(server).signIn(INES, "not the password at all");
        for (String name : List.of("Nobody Atall", "Otto Brandt", "Nell Ashby")) {
            Reply other = new Caller(server).signIn(name, Staff.PASSWORD);
            assertEquals(401, other.status(), name);
            assertEquals(wrong.text(), other.text(), name);
            assertEquals(names(wrong), names(other), name);
        }
    }

    private static List<String> names(Reply reply) {
        return reply.response().headers().map().keySet().stream().filter(name -> !name.equalsIgnoreCase("date")).sorted().toList();
    }

    @Test
    void aSessionEndsAfterAWorkingDayWithoutUseAndAMonthAtMost() {
        Caller ines = staff.at(INES);
        clock.turn(Duration.ofHours(9));
        assertEquals(200, yard(ines).status());
        clock.turn(Duration.ofHours(9));
        assertEquals(200, yard(ines).status(), "it was used nine hours ago");
        clock.turn(Duration.ofHours(10));
        Reply over = yard(ines);
        assertEquals(401, over.status());
        String forgotten = over.header("Set-Cookie").orElseThrow();
        assertTrue(forgotten.startsWith("longsummer=;") && forgotten.contains("1970"), forgotten);

        Caller busy = staff.at(INES);
        for (int i = 0; i < 30 * 24 / 8 - 1; i++) {
            clock.turn(Duration.ofHours(8));
            assertEquals(200, yard(busy).status(), "after " + i);
        }
        clock.turn(Duration.ofHours(8));
        assertEquals(401, yard(busy).status(), "a month is over");
    }

    @Test
    void signingOutEndsTheSessionOnTheServer() {
        Caller ines = staff.at(INES);
        String key = ines.cookies().get("longsummer");
        Reply out = ines.delete("/api/session");
        assertEquals(200, out.status());
        assertEquals("\"cache\"", out.header("Clear-Site-Data").orElseThrow());
        assertTrue(ines.cookies().isEmpty());
        assertEquals(401, yard(new Caller(server).withCookie("longsummer", key)).status());
    }

    @Test
    void signingOutEverywhereEndsBrowsersAndPhones() {
        Caller desk = staff.at(INES);
        Caller van = staff.at(INES);
        Caller phone = staff.onPhone(INES);
        Caller other = staff.at("Otto Brandt");
        assertEquals(200, desk.delete("/api/account/sessions").status());
        for (Caller caller : List.of(desk, van, phone)) {
            assertEquals(401, yard(caller).status());
        }
        assertEquals(200, yard(other).status(), "it is one person's own");
    }

    @Test
    void aPhoneSignsInOnceAndIsCutOffByItself() {
        Caller phone = new Caller(server);
        Reply reply = phone.signInOnPhone(INES, Staff.PASSWORD, "Ines's phone");
        assertTrue(reply.header("Set-Cookie").orElseThrow().contains("Max-Age=" + Duration.ofDays(400).toSeconds()));
        clock.turn(Duration.ofDays(150));
        assertEquals(200, yard(phone).status(), "over the winter");
        Caller desk = staff.at(INES);
        JsonNode sessions = desk.get("/api/account").body().path("sessions");
        assertEquals(2, sessions.size());
        JsonNode lost = sessions.get(0).path("kind").asText().equals("phone") ? sessions.get(0) : sessions.get(1);
        assertEquals("Ines's phone", lost.path("label").asText());
        assertFalse(lost.path("here").asBoolean());
        assertEquals(404, staff.at("Otto Brandt").delete("/api/account/sessions/" + lost.path("id").asText()).status(), "not his");
        assertEquals(200, desk.delete("/api/account/sessions/" + lost.path("id").asText()).status());
        assertEquals(401, yard(phone).status());
        assertEquals(200, yard(desk).status());
    }

    @Test
    void aPhoneNeverLooksAfterPeople() {
        Caller phone = staff.onPhone(Staff.ADMINISTRATOR);
        assertEquals(200, yard(phone).status());
        assertEquals(403, phone.get("/api/people").status());
        assertEquals(200, staff.at(Staff.ADMINISTRATOR).get("/api/people").status());
    }

    @Test
    void guessingIsBrakedByTheClockAndLocksNobodyOut() {
        Caller guesser = new Caller(server);
        for (int i = 0; i < 5; i++) {
            assertEquals(401, guesser.signIn(INES, "guess number " + i).status());
        }
        Reply braked = guesser.signIn(INES, Staff.PASSWORD);
        assertEquals(429, braked.status(), "even the right one waits");
        assertEquals("180", braked.header("Retry-After").orElseThrow());
        assertEquals(200, guesser.signIn("Otto Brandt", Staff.PASSWORD).status(), "another name from the same address");
        clock.turn(Duration.ofMinutes(3));
        assertEquals(200, guesser.signIn(INES, Staff.PASSWORD).status());
        for (int i = 0; i < 5; i++) {
            assertEquals(401, guesser.signIn(INES, "guess number " + i).status(), "being right starts it afresh");
        }
    }

    @Test
    void anUnknownNameIsBrakedLikeAKnownOne() {
        for (int i = 0; i < 5; i++) {
            assertEquals(401, new Caller(server).signIn("Nobody Atall", "guess number " + i).status());
        }
        assertEquals(429, new Caller(server).signIn("Nobody Atall", "guess number 5").status());
    }

    @Test
    void aPasswordIsChangedByWhoeverKnowsItAndEndsTheOtherSessions() {
        Caller desk = staff.at(INES);
        Caller phone = staff.onPhone(INES);
        String better = "thimble orchard ferry sixteen";
        assertEquals(422, desk.post("/api/account/password", Map.of("password", "wrong one entirely", "new_password", better)).status());
        assertEquals(200, yard(phone).status());
        Reply changed = desk.post("/api/account/password", Map.of("password", Staff.PASSWORD, "new_password", better));
        assertEquals(200, changed.status(), changed.text());
        assertEquals(200, yard(desk).status(), "he goes on where he changed it");
        assertEquals(401, yard(phone).status());
        assertEquals(401, new Caller(server).signIn(INES, Staff.PASSWORD).status());
        assertEquals(200, new Caller(server).signIn(INES, better).status());
    }

    @Test
    void aPasswordIsKeptExactlyAsItWasTyped() {
        String typed = " Grüße «μ» 夏 и 12 spaces  ";
        Caller desk = staff.at(INES);
        assertEquals(200, desk.post("/api/account/password", Map.of("password", Staff.PASSWORD, "new_password", typed)).status());
        assertEquals(200, new Caller(server).signIn(INES, typed).status());
        assertEquals(401, new Caller(server).signIn(INES, typed.strip()).status());
        assertEquals(401, new Caller(server).signIn(INES, typed.toLowerCase(java.util.Locale.ROOT)).status());
    }

    @Test
    void aPoorPasswordIsRefusedWithItsReason() {
        Caller desk = staff.at(INES);
        for (String poor : List.of("elevenchars", "passwordpassword", "Longsummer2026", "ines calder ferrow", "qwertyuiop12", "aaaaaaaaaaaaaaaa")) {
            Reply reply = desk.post("/api/account/password", Map.of("password", Staff.PASSWORD, "new_password", poor));
            assertEquals(422, reply.status(), poor);
            assertEquals("new_password", reply.body().path("problems").get(0).path("field").asText(), poor);
            assertFalse(reply.text().contains(poor), "a password is never sent back");
        }
    }

    @Test
    void closingAnAccountEndsEverythingOfItAtOnce() {
        Caller ines = staff.at(INES);
        Caller phone = staff.onPhone(INES);
        String key = ines.post("/api/account/programs", Map.of("password", Staff.PASSWORD, "name", "shop system", "most", "see")).body().path("key").asText();
        Caller program = new Caller(server).with("Origin", null).with("Authorization", "Bearer " + key);
        assertEquals(200, yard(program).status());
        Caller ada = staff.at(Staff.ADMINISTRATOR);
        assertEquals(200, ada.post("/api/people/" + staff.person(INES).id() + "/closing", "{}").status());
        for (Caller caller : List.of(ines, phone, program)) {
            assertEquals(401, yard(caller).status());
        }
        assertEquals(401, new Caller(server).signIn(INES, Staff.PASSWORD).status());
        assertEquals(200, ada.post("/api/people/" + staff.person(INES).id() + "/reopening", "{}").status());
        assertEquals(401, new Caller(server).signIn(INES, Staff.PASSWORD).status(), "a new password must be chosen");
        assertEquals(401, yard(program).status());
    }

    @Test
    void anotherRoleAndOtherDepotsHoldFromTheNextRequestOn() {
        Caller ines = staff.at(INES);
        assertEquals(403, ines.post("/api/import", "{}").status());
        Caller ada = staff.at(Staff.ADMINISTRATOR);
        assertEquals(200, ada.post("/api/people/" + staff.person(INES).id(), Map.of("role", "manager", "depots", List.of(Staff.THEIRS))).status());
        assertNotEquals(403, ines.post("/api/import", "{}").status());
        assertEquals("[\"" + Staff.THEIRS + "\"]", ines.get("/api/session").body().path("depots").toString());
    }

    @Test
    void onePersonHasSoManySessionsAndTheOldestMakesRoom() {
        Caller first = staff.at(INES);
        for (int i = 0; i < Sessions.MOST_OF_ONE_PERSON; i++) {
            clock.turn(Duration.ofMinutes(1));
            staff.at(INES);
        }
        assertEquals(Sessions.MOST_OF_ONE_PERSON, server.store.sessions().ofPerson(staff.person(INES).id()).size());
        assertEquals(401, yard(first).status());
    }

    @Test
    void anAdministratorEndsSomebodysSessions() {
        Caller ines = staff.at(INES);
        assertEquals(200, staff.at(Staff.ADMINISTRATOR).delete("/api/people/" + staff.person(INES).id() + "/sessions").status());
        assertEquals(401, yard(ines).status());
    }
}
