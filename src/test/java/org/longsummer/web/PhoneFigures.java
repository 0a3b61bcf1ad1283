package org.longsummer.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ServiceWorkerPolicy;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.longsummer.demo.DemoFleet;
import org.longsummer.evidence.Project;

/**
 * What the technician's phone costs: {@code mvn -B test -Dtest=PhoneFigures -Dfigures.write=true} measures and rewrites the table in
 * {@code reference/phone.md}. No part of the build's tests; nothing is asserted but that each thing happens.
 */
class PhoneFigures {
    private static final Path PAGE = Project.REFERENCE.resolve("phone.md");
    private static final Pattern TABLE = Pattern.compile("(?s)(<!-- figures[^>]*-->\n).*?(<!-- end -->)");
    private static final int SLOWED = 4;
    private static final int READINGS = 40;
    /** From the key that completes a reading to the frame after the verdict is on the page. */
    private static final String WATCH = """
            () => {
              window.took = [];
              document.getElementById('amps').addEventListener('input', event => { window.began = event.timeStamp; }, true);
              new MutationObserver(() => requestAnimationFrame(() => {
                const channel = new MessageChannel();
                channel.port1.onmessage = () => { if (window.began) window.took.push(performance.now() - window.began); };
                channel.port2.postMessage(0);
              })).observe(document.getElementById('live-said'), { childList: true });
            }""";

    private final StringBuilder rows = new StringBuilder();
    private RunningServer server;

    @BeforeEach
    void start() {
        server = new RunningServer(Clock.systemUTC());
        DemoFleet.load(server.store);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private BrowserContext phone(ServiceWorkerPolicy workers) {
        return BrowserOnThisMachine.shared().newContext(new NewContextOptions().setViewportSize(360, 740).setHasTouch(true).setLocale("en-US")
                .setTimezoneId("America/Denver").setServiceWorkers(workers));
    }

    @Test
    void measure() throws IOException, InterruptedException {
        firstLoad();
        wholeShell();
        tapToVerdict("FF-02");
        tapToVerdict(longHistory());
        standardVisit();
        System.out.println(rows);
        if (Boolean.getBoolean("figures.write")) {
            Project.write(PAGE, TABLE.matcher(Project.read(PAGE)).replaceFirst(found -> found.group(1) + rows + found.group(2)));
        }
    }

    private void row(String what, String aim, String measured) {
        if (rows.isEmpty()) {
            rows.append("| what | aim | measured |\n|---|---:|---:|\n");
        }
        rows.append("| ").append(what).append(" | ").append(aim).append(" | ").append(measured).append(" |\n");
    }

    private static String kilobytes(long bytes) {
        return Math.round(bytes / 1000.0) + " kB";
    }

    /** The visit page on a phone that was never here, until it says what the unit should show. */
    private void firstLoad() {
        try (BrowserContext phone = phone(ServiceWorkerPolicy.BLOCK)) {
            Page page = phone.newPage();
            Map<String, String> addresses = new HashMap<>();
            Map<String, Long> sizes = new HashMap<>();
            CDPSession network = phone.newCDPSession(page);
            network.on("Network.requestWillBeSent", event -> addresses.put(text(event, "requestId"), event.getAsJsonObject("request").get("url").getAsString()));
            network.on("Network.loadingFinished", event -> sizes.put(text(event, "requestId"), event.get("encodedDataLength").getAsLong()));
            network.send("Network.enable");
            page.navigate(server.address("visit/?unit=FF-02"));
            assertThat(page.locator("#live-said")).containsText("should be");
            page.waitForTimeout(2_000);
            long core = sizes.entrySet().stream().filter(size -> addresses.get(size.getKey()).endsWith("core.js")).mapToLong(Map.Entry::getValue).sum();
            long all = sizes.values().stream().mapToLong(Long::longValue).sum();
            row("first load of the visit page with its unit, compressed, %d requests".formatted(sizes.size()), "< 300 kB", kilobytes(all));
            row("of which the compiled core", "", kilobytes(core));
        }
    }

    private static String text(JsonObject event, String name) {
        return event.get(name).getAsString();
    }

    /** All that is kept to start without a signal, the chart's library apart. */
    private void wholeShell() throws IOException, InterruptedException {
        HttpClient client = HttpClient.newHttpClient();
        String worker = client.send(HttpRequest.newBuilder(URI.create(server.address("service-worker.js"))).build(), BodyHandlers.ofString()).body();
        String list = worker.substring(worker.indexOf('[') + 1, worker.indexOf(']'));
        List<String> addresses = List.of(list.replace("\"", "").split(",\\s*"));
        long bytes = 0;
        for (String address : addresses) {
            bytes += client.send(HttpRequest.newBuilder(URI.create(server.address(address))).header("Accept-Encoding", "gzip").build(),
                    BodyHandlers.ofByteArray()).body().length;
        }
        row("all %d files kept to start without a signal, compressed".formatted(addresses.size()), "", kilobytes(bytes));
    }

    /** A unit with a history longer than most will ever have. */
    private String longHistory() {
        String unit = server.addUnit("Heron 40", "Ferrow Flats");
        for (int i = 0; i < 200; i++) {
            String at = "%d-%02d-%02dT14:05".formatted(2022 + i / 50, 5 + i % 50 / 10, 1 + i % 10 * 2);
            server.saveVisit(unit, "L%03d".formatted(i), RunningServer.soundVisit(at));
        }
        return unit;
    }

    private void tapToVerdict(String unit) {
        try (BrowserContext phone = phone(ServiceWorkerPolicy.BLOCK)) {
            Page page = phone.newPage();
            phone.newCDPSession(page).send("Emulation.setCPUThrottlingRate", rate());
            page.navigate(server.address("visit/?unit=" + unit));
            fillAllButAmps(page);
            page.evaluate(WATCH);
            for (int i = 0; i < READINGS; i++) {
                int before = ((Number) page.evaluate("window.took.length")).intValue();
                page.getByLabel(Pattern.compile("^Amps")).first().fill("12." + i % 10);
                page.waitForFunction("count => window.took.length > count", before);
                page.waitForTimeout(60);
            }
            List<Double> took = ((List<?>) page.evaluate("window.took")).stream().map(time -> ((Number) time).doubleValue()).sorted().toList();
            int visits = server.get("api/units/" + unit).body().path("visits").size();
            row("from the last key of a reading to the verdict, processor slowed %d times, unit with %d visits: median of %d, nine tenths within".formatted(
                    SLOWED, visits, took.size()), "< 100 ms", Math.round(took.get(took.size() / 2)) + " ms, " + Math.round(took.get(took.size() * 9 / 10)) + " ms");
        }
    }

    private static JsonObject rate() {
        JsonObject rate = new JsonObject();
        rate.addProperty("rate", SLOWED);
        return rate;
    }

    private static void fillAllButAmps(Page page) {
        Map.of("Minutes it had run", "18", "Return air", "78", "Return humidity", "50", "Outdoor air", "92", "Supply air", "57.5", "Volts under load", "117")
                .forEach((label, text) -> page.getByLabel(Pattern.compile("^" + label)).first().fill(text));
    }

    /** Taps and keys of a whole visit, from the start page to what is saved: looks, clock, six readings, where they were taken. */
    private void standardVisit() {
        try (BrowserContext phone = phone(ServiceWorkerPolicy.BLOCK)) {
            Page page = phone.newPage();
            page.addInitScript("localStorage.setItem('longsummer.technician', 'Ines'); localStorage.setItem('longsummer.last-units', '[\"FF-02\"]');");
            page.clock().install();
            page.navigate(server.address("phone/"));
            Hand hand = new Hand(page);
            hand.tap(AriaRole.LINK, "Van FF2");
            hand.choose("clean");
            hand.tap(AriaRole.BUTTON, "It starts now");
            page.clock().fastForward("16:30");
            hand.tap(AriaRole.TEXTBOX, "Return air");
            hand.type("78.3");
            hand.next("45");
            hand.next("88.2");
            hand.next("59.1");
            hand.next("114");
            hand.next("13.2");
            hand.choose("at the condenser");
            hand.choose("louver");
            hand.tap(AriaRole.BUTTON, "Save this visit");
            assertThat(page.locator("#title")).hasText("Saved");
            row("taps of a full standard visit, from the start page, besides the digits; the number pad’s key for the next box is one", "≤ 12", "" + hand.taps);
            row("digits and decimal signs typed", "", "" + hand.keys);
        }
    }

    /** Counts what it does. */
    private static final class Hand {
        private final Page page;
        private int taps;
        private int keys;

        Hand(Page page) {
            this.page = page;
        }

        void tap(AriaRole role, String name) {
            page.getByRole(role, new Page.GetByRoleOptions().setName(name)).first().tap();
            taps++;
        }

        void choose(String word) {
            page.getByText(word, new Page.GetByTextOptions().setExact(true)).first().tap();
            taps++;
        }

        void type(String text) {
            page.keyboard().type(text);
            keys += text.length();
        }

        void next(String text) {
            page.keyboard().press("Enter");
            taps++;
            type(text);
        }
    }
}
