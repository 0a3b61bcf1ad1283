package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.longsummer.web.Caller.Reply;

/** What every answer tells the browser, what a writing request must tell, and what a broken one is told. */
class HeadersTest {
    private static final Pattern INSIDE = Pattern.compile("\\bat (org|java|io|com)\\.|Exception|Caused by|jetty|javalin|sqlite", Pattern.CASE_INSENSITIVE);

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

    @Test
    void pagesLoadNothingInlineAndNothingFromElsewhereAndStandInNoFrame() {
        for (String path : List.of("/yard/", "/sign-in/", "/people/", "/shared/api.js", "/nothing/here")) {
            Reply reply = staff.nobody().get(path);
            String policy = reply.header("Content-Security-Policy").orElseThrow();
            for (String part : List.of("default-src 'self'", "object-src 'none'", "base-uri 'none'", "form-action 'self'", "frame-ancestors 'none'")) {
                assertTrue(policy.contains(part), path + ": " + policy);
            }
            assertFalse(policy.contains("unsafe") || policy.contains("http") || policy.contains("*"), policy);
            assertEquals("nosniff", reply.header("X-Content-Type-Options").orElseThrow());
            assertEquals("same-origin", reply.header("Cross-Origin-Opener-Policy").orElseThrow());
            assertEquals("same-origin", reply.header("Cross-Origin-Resource-Policy").orElseThrow());
            assertEquals("same-origin", reply.header("Referrer-Policy").orElseThrow());
            assertTrue(reply.header("Content-Type").orElseThrow().toLowerCase(java.util.Locale.ROOT).contains("charset=utf-8"), path);
            assertTrue(reply.header("Server").isEmpty() && reply.header("X-Powered-By").isEmpty());
        }
    }

    @Test
    void theFilesOfThePagesKeepToThePolicy() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("web"))) {
            for (Path file : files.filter(path -> path.toString().matches(".*\\.(html|js|css|svg)")).toList()) {
                String text = Files.readString(file);
                assertFalse(Pattern.compile("(src|href)=[\"']?(https?:)?//").matcher(text).find(), file + " asks another host");
                assertFalse(text.contains("innerHTML") || text.contains("outerHTML") || text.contains("insertAdjacentHTML")
                        || text.contains("document.write") || Pattern.compile("\\beval\\(|new Function\\(").matcher(text).find(), file + " makes markup of text");
                if (file.toString().endsWith(".html")) {
                    assertFalse(Pattern.compile("<script(?![^>]*\\bsrc=)|\\son\\w+=|\\sstyle=|<style|javascript:").matcher(text).find(), file + " has something inline");
                }
            }
        }
    }

    @Test
    void whatTheApiAnswersIsKeptNowhereAndRunsNowhere() {
        for (String path : List.of("/api/yard", "/api/session", "/api/account", "/api/nothing")) {
            Reply reply = staff.at("Ines Calder").get(path);
            assertEquals("no-store", reply.header("Cache-Control").orElseThrow(), path);
            assertTrue(reply.header("Content-Type").orElseThrow().startsWith("application/json"), path);
            assertTrue(reply.header("Content-Security-Policy").orElseThrow().contains("default-src 'none'"), path);
            assertTrue(reply.header("Access-Control-Allow-Origin").isEmpty(), path);
        }
    }

    @Test
    void anotherSitesPageMayNotWriteWithTheSessionOfWhoeverLooksAtIt() {
        Map<String, Object> form = Map.of("boxes", Map.of("label", "Forged", "site", Staff.OURS));
        List<Caller> forgers = List.of(staff.at("Ines Calder").with("Origin", "https://elsewhere.example"),
                staff.at("Ines Calder").with("Origin", "null"),
                staff.at("Ines Calder").with("Origin", "http://127.0.0.1:1"),
                staff.at("Ines Calder").with("Origin", null),
                staff.at("Ines Calder").with("Sec-Fetch-Site", "cross-site"),
                staff.at("Ines Calder").with("Sec-Fetch-Site", "same-site"),
                staff.at("Ines Calder").with("Origin", "https://elsewhere.example").with("Content-Type", "text/plain"),
                staff.nobody().with("Origin", "https://elsewhere.example"));
        for (Caller forger : forgers) {
            assertEquals(403, forger.post("/api/units", form).status());
            assertEquals(403, forger.delete("/api/session").status());
            assertEquals(403, forger.signIn("Ines Calder", Staff.PASSWORD).status(), "nor sign somebody in");
        }
        assertEquals(0, server.store.units().count());
        assertEquals(201, staff.at("Ines Calder").with("Sec-Fetch-Site", "same-origin").post("/api/units", form).status());
    }

    @Test
    void lookingChangesNothing() {
        int before = server.store.journal().count();
        Caller ada = staff.at(Staff.ADMINISTRATOR);
        int lines = server.store.journal().count();
        server.server.addresses().stream().filter(address -> address.method().equals("GET")).forEach(address ->
                ada.get(address.path().replaceAll("\\{\\w+}", "nothing").replace("*", "nothing")));
        assertEquals(lines, server.store.journal().count());
        assertNotEquals(before, lines, "a sign-in is in the journal");
    }

    /** Whatever is sent, no answer tells of the inside. */
    @Test
    void noAnswerShowsTheInside() throws IOException {
        List<String> requests = List.of("GARBAGE\r\n\r\n", "GET /%00 HTTP/1.1\r\nHost: h\r\n\r\n", "GET / HTTP/9.9\r\nHost: h\r\n\r\n",
                "GET /api/units/%zz HTTP/1.1\r\nHost: h\r\n\r\n", "GET / HTTP/1.1\r\n\r\n", "GET / HTTP/1.1\r\nHost: h\r\nX: " + "y".repeat(40_000) + "\r\n\r\n",
                "POST /api/session HTTP/1.1\r\nHost: h\r\nContent-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n",
                "TRACE /api/yard HTTP/1.1\r\nHost: h\r\n\r\n", "GET /" + "a".repeat(20_000) + " HTTP/1.1\r\nHost: h\r\n\r\n",
                "POST /api/session HTTP/1.1\r\nHost: h\r\nContent-Type: application/json\r\nContent-Length: 3\r\n\r\n{\"a",
                "POST /api/import HTTP/1.1\r\nHost: h\r\nContent-Type: multipart/form-data\r\nContent-Length: 3\r\n\r\nabc");
        for (String request : requests) {
            String answer = raw(request.replaceFirst("\r\n\r\n", "\r\nConnection: close\r\n\r\n"));
            assertFalse(INSIDE.matcher(answer).find(), request.lines().findFirst().orElse("") + " was answered " + answer);
        }
        Caller ada = staff.at(Staff.ADMINISTRATOR);
        for (Object body : List.of("", "null", "[]", "{", "{\"boxes\":3}", "{\"boxes\":{\"label\":{\"a\":1}}}", "x".repeat(1_100_000), "{\"boxes\":".repeat(3_000))) {
            for (String path : List.of("/api/units", "/api/session", "/api/people", "/api/account/password", "/api/invitation")) {
                Reply reply = ada.post(path, body);
                assertTrue(reply.status() >= 400 && reply.status() < 500, path + " answered " + reply.status());
                assertFalse(INSIDE.matcher(reply.text()).find(), path + " answered " + reply.text());
            }
        }
        assertEquals(400, staff.at("Moss Tarrin").with("Content-Type", "multipart/form-data").post("/api/import", "abc").status());
    }

    private String raw(String request) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", server.server.port())) {
            socket.setSoTimeout(5_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            socket.shutdownOutput();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
        }
    }
}
