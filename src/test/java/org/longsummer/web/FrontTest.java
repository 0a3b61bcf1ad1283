package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.http.HttpClient;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLException;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.web.Caller.Reply;

/** How the server stands towards the network: open to this machine alone, behind a proxy, under a path, over TLS. */
class FrontTest {
    private static final Front PROXIED = new Front("", true, Optional.empty(), true);
    private static final Front UNDER_A_PATH = new Front("/fleet", false, Optional.empty(), true);

    @TempDir
    private Path directory;

    private final TurningClock clock = new TurningClock("2026-07-20T18:00:00Z");

    @Test
    void withoutPeopleThisMachineAloneFindsItOpen() {
        try (RunningServer server = new RunningServer(clock)) {
            assertEquals(200, server.get("api/yard").status());
            assertTrue(server.get("api/session").body().path("open").asBoolean());
            assertEquals(401, raw(server, "GET /api/yard", "Host: fleet.example"), "a name that was made to lead here");
            assertEquals(401, raw(server, "GET /api/yard", "Host: 127.0.0.1.fleet.example:80"));
            for (String mark : List.of("X-Forwarded-For: 203.0.113.9", "Forwarded: for=203.0.113.9", "Via: 1.1 gate")) {
                assertEquals(401, raw(server, "GET /api/yard", "Host: localhost", mark), "somebody stands between: " + mark);
            }
            assertEquals(200, raw(server, "GET /api/yard", "Host: localhost:8115"));
        }
    }

    @Test
    void onAnOpenServerTheTypedNameStandsInTheJournal() {
        try (RunningServer server = new RunningServer(clock)) {
            Caller caller = new Caller(server).with("Longsummer-Name", "In%C3%A9s%0ACalder");
            assertEquals(201, caller.post("/api/units", Map.of("boxes", Map.of("label", "Heron 7"))).status());
            assertEquals("Inés Calder, typed", server.store.journal().page(0, 1).stream().map(line -> line.who() + ", " + line.way())
                    .findFirst().orElseThrow());
        }
    }

    @Test
    void whoeverIsExposedIsNeverOpen() {
        try (RunningServer server = new RunningServer(clock, PROXIED)) {
            assertEquals(401, server.get("api/yard").status());
            assertEquals(401, server.post("api/people", Map.of("name", "Eve", "role", "administrator")).status());
        }
    }

    @Test
    void theFirstAdministratorsPasswordClosesTheDoor() {
        try (RunningServer server = new RunningServer(clock)) {
            assertEquals(409, server.post("api/people", Map.of("name", "Ines Calder", "role", "technician")).status());
            String link = server.post("api/people", Map.of("name", "Ada Merrow", "role", "administrator")).body().path("address").asText();
            assertEquals(200, server.get("api/yard").status(), "she has no password yet");
            Map<String, String> choosing = Map.of("key", link.substring(link.indexOf('#') + 1), "password", Staff.PASSWORD);
            assertEquals("Ada Merrow", server.post("api/invitation", Map.of("key", choosing.get("key"))).body().path("name").asText());
            assertEquals(200, server.post("api/invitation", choosing).status());
            assertEquals(401, server.get("api/yard").status());
            assertEquals(404, server.post("api/invitation", choosing).status(), "the link works once");
            assertEquals(200, new Caller(server).signIn("Ada Merrow", Staff.PASSWORD).status());
        }
    }

    @Test
    void aLinkToChooseAPasswordIsSoonOver() {
        try (RunningServer server = new RunningServer(clock)) {
            Staff staff = new Staff(server);
            Caller ada = staff.at(Staff.ADMINISTRATOR);
            String path = "/api/people/" + staff.person("Ines Calder").id() + "/invitation";
            String first = ada.post(path, "{}").body().path("address").asText();
            String second = ada.post(path, "{}").body().path("address").asText();
            assertEquals(404, staff.nobody().post("/api/invitation", Map.of("key", key(first))).status(), "the later one took its place");
            assertEquals(422, staff.nobody().post("/api/invitation", Map.of("key", key(second), "password", "short")).status());
            clock.turn(java.time.Duration.ofHours(73));
            assertEquals(404, staff.nobody().post("/api/invitation", Map.of("key", key(second))).status());
        }
    }

    private static String key(String address) {
        return address.substring(address.indexOf('#') + 1);
    }

    @Test
    void theLastAdministratorStays() {
        try (RunningServer server = new RunningServer(clock)) {
            Staff staff = new Staff(server);
            Caller ada = staff.at(Staff.ADMINISTRATOR);
            String id = staff.person(Staff.ADMINISTRATOR).id();
            assertEquals(409, ada.post("/api/people/" + id + "/closing", "{}").status());
            assertEquals(409, ada.post("/api/people/" + id, Map.of("role", "manager")).status());
            assertEquals(409, ada.post("/api/people", Map.of("name", "ada  merrow", "role", "technician")).status(), "the name is taken");
        }
    }

    @Test
    void whatAProxySaysIsBelievedOnlyWhenToldSo() {
        try (RunningServer server = new RunningServer(clock)) {
            new Staff(server);
            Caller caller = new Caller(server).with("X-Forwarded-Proto", "https").with("X-Forwarded-For", "203.0.113.9");
            String cookie = caller.signIn("Ines Calder", Staff.PASSWORD).header("Set-Cookie").orElseThrow();
            assertFalse(cookie.contains("Secure"), cookie);
        }
        try (RunningServer server = new RunningServer(clock, PROXIED)) {
            new Staff(server);
            Caller caller = new Caller(server).with("X-Forwarded-Proto", "https").with("X-Forwarded-Host", "fleet.example")
                    .with("Origin", "https://fleet.example");
            Reply reply = caller.signIn("Ines Calder", Staff.PASSWORD);
            assertEquals(200, reply.status(), reply.text());
            String cookie = reply.header("Set-Cookie").orElseThrow();
            assertTrue(cookie.startsWith("__Host-longsummer=") && cookie.contains("Secure") && cookie.contains("Path=/"), cookie);
            assertEquals("max-age=31536000", reply.header("Strict-Transport-Security").orElseThrow());
            assertEquals(403, caller.with("Origin", "https://elsewhere.example").post("/api/units", "{}").status());
        }
    }

    /** Whoever is braked writes other addresses before the proxy's own; the last is the one that the proxy saw. */
    @Test
    void nobodySlipsTheBrakeByInventingHops() {
        try (RunningServer server = new RunningServer(clock, PROXIED)) {
            new Staff(server);
            for (int i = 0; i < 5; i++) {
                assertEquals(401, new Caller(server).with("X-Forwarded-For", "198.51.100." + i + ", 203.0.113.9").signIn("Ines Calder", "guess " + i).status());
            }
            assertEquals(429, new Caller(server).with("X-Forwarded-For", "198.51.100.77, 203.0.113.9").signIn("Ines Calder", "guess").status());
            assertEquals(200, new Caller(server).with("X-Forwarded-For", "203.0.113.10").signIn("Ines Calder", Staff.PASSWORD).status(),
                    "at her own desk she comes in");
        }
    }

    @Test
    void everythingLiesUnderTheBasePath() {
        try (RunningServer server = new RunningServer(clock, UNDER_A_PATH)) {
            new Staff(server);
            Caller caller = new Caller(server);
            assertEquals(200, caller.get("/fleet/yard/").status());
            assertEquals(200, caller.get("/fleet/shared/api.js").status());
            assertEquals(401, caller.get("/fleet/api/yard").status());
            assertEquals(404, caller.get("/yard/").status());
            assertEquals(404, caller.get("/api/yard").status());
            Reply reply = caller.post("/fleet/api/session", Map.of("name", "Ines Calder", "password", Staff.PASSWORD));
            assertTrue(reply.header("Set-Cookie").orElseThrow().startsWith("longsummer-fleet="), "it keeps apart from another on this host");
            assertEquals(200, caller.get("/fleet/api/yard").status());
            assertEquals("no-store", caller.get("/fleet/api/yard").header("Cache-Control").orElseThrow());
            assertTrue(caller.get("/fleet/nothing").text().contains("href=\"/fleet/yard/\""));
            assertEquals("yard/", caller.get("/fleet/").header("Location").orElseThrow());
        }
        assertTrue(Front.isBasePath("/a/b-c") && Front.isBasePath("") && !Front.isBasePath("a") && !Front.isBasePath("/a\"b"));
    }

    @Test
    void overTlsTheCookieIsOfThisHostAlone() throws IOException, GeneralSecurityException {
        Path keystore = keystore();
        Front front = new Front("", false, Optional.of(Tls.read(keystore, "a password for a test")), true);
        try (RunningServer server = new RunningServer(clock, front)) {
            new Staff(server);
            String address = "https://localhost:" + server.server.port();
            HttpClient client = HttpClient.newBuilder().sslContext(trusting(keystore)).build();
            Caller caller = new Caller(address, client).with("Origin", address);
            Reply reply = caller.signIn("Ines Calder", Staff.PASSWORD);
            assertEquals(200, reply.status());
            String cookie = reply.header("Set-Cookie").orElseThrow();
            assertTrue(cookie.startsWith("__Host-longsummer=") && cookie.contains("Secure"), cookie);
            assertTrue(reply.header("Strict-Transport-Security").isEmpty(), "a browser would insist for every program on this machine");
            assertEquals(200, caller.get("/api/yard").status());
            assertEquals("TLSv1.3", protocol(server, keystore, "TLSv1.3"));
            assertEquals("TLSv1.2", protocol(server, keystore, "TLSv1.2"));
            assertThrows(SSLException.class, () -> protocol(server, keystore, "TLSv1.1"));
            assertTrue(plainly(server).isEmpty() || !plainly(server).startsWith("HTTP/1.1 2"), "nothing without TLS");
        }
    }

    private static String plainly(RunningServer server) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", server.server.port())) {
            socket.getOutputStream().write("GET /yard/ HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
        }
    }

    private static String protocol(RunningServer server, Path keystore, String version) throws IOException, GeneralSecurityException {
        try (SSLSocket socket = (SSLSocket) trusting(keystore).getSocketFactory().createSocket("localhost", server.server.port())) {
            socket.setEnabledProtocols(new String[] {version});
            socket.startHandshake();
            return socket.getSession().getProtocol();
        }
    }

    private static SSLContext trusting(Path keystore) throws IOException, GeneralSecurityException {
        KeyStore store = KeyStore.getInstance(keystore.toFile(), "a password for a test".toCharArray());
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        KeyStore known = KeyStore.getInstance(KeyStore.getDefaultType());
        known.load(null, null);
        known.setCertificateEntry("test", store.getCertificate("test"));
        trust.init(known);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return context;
    }

    @Test
    void aKeystoreThatCannotBeUsedIsSaidInWords() throws IOException {
        Path keystore = keystore();
        assertTrue(assertThrows(IOException.class, () -> Tls.read(keystore, "another")).getMessage().contains("password"));
        assertTrue(assertThrows(IOException.class, () -> Tls.read(directory.resolve("none.p12"), "x")).getMessage().contains("is not there"));
        Path text = Files.writeString(directory.resolve("text.p12"), "not a keystore");
        assertThrows(IOException.class, () -> Tls.read(text, "x"));
    }

    /** Made by the tool that comes with every JDK. */
    private Path keystore() throws IOException {
        Path file = directory.resolve("test.p12");
        Process made = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "keytool").toString(), "-genkeypair", "-alias", "test",
                "-keyalg", "EC", "-groupname", "secp256r1", "-dname", "CN=localhost", "-ext", "SAN=dns:localhost,ip:127.0.0.1", "-storetype", "PKCS12",
                "-keystore", file.toString(), "-storepass", "a password for a test").redirectErrorStream(true).start();
        try (InputStream said = made.getInputStream()) {
            String words = new String(said.readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(Files.exists(file), words);
        }
        return file;
    }

    private static int raw(RunningServer server, String first, String... headers) {
        try (Socket socket = new Socket("127.0.0.1", server.server.port())) {
            String request = first + " HTTP/1.1\r\n" + String.join("\r\n", headers) + "\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
            return Integer.parseInt(answer.substring(9, 12));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
