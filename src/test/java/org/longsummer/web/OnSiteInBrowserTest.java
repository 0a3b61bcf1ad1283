package org.longsummer.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.google.gson.JsonElement;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.longsummer.demo.DemoFleet;

/** What a technician does on the spot with his phone, besides typing readings: clock, photos, work and what comes after it. */
class OnSiteInBrowserTest {
    private static final String DEPOT = "Ferrow Flats";
    /** What the browser says of every page of a test's window, which keeps nothing. */
    private static final String NO_WINDOW_OF_ITS_OWN = "in-incognito";

    /** What has the focus and is under the verdict; empty when it is not, null where the focus is not in the form. */
    private static final String HIDDEN = """
            () => {
              const focused = document.activeElement;
              const live = document.getElementById('live');
              if (!focused.closest('#form') || live.contains(focused)) return null;
              const box = (focused.closest('.box') ?? focused.closest('label') ?? focused).getBoundingClientRect();
              return box.bottom > live.getBoundingClientRect().top + 1 ? focused.outerHTML : '';
            }""";

    private RunningServer server;
    private Phone phone;

    @BeforeEach
    void start() {
        server = new RunningServer(Clock.systemUTC());
        phone = new Phone(BrowserOnThisMachine.shared(), server);
    }

    @AfterEach
    void stop() {
        phone.close();
        server.close();
    }

    private String unit(String label) {
        String unit = server.addUnit(label, DEPOT);
        assertEquals(201, server.saveVisit(unit, unit + "-1", RunningServer.soundVisit("2025-06-11T14:05")).status());
        return unit;
    }

    @Test
    void theRunInClockSurvivesALockedScreenAndAReloadAndFillsInTheMinutes() {
        String unit = unit("Heron 20");
        phone.page.clock().install();
        phone.go("visit/?unit=" + unit);
        phone.tap(AriaRole.BUTTON, "It starts now");
        assertThat(phone.page.locator("#clock")).containsText("settled at");
        phone.page.clock().fastForward("07:00");
        assertThat(phone.box("Minutes it had run")).hasValue("7");
        phone.page.reload();
        phone.page.clock().fastForward("09:10");
        assertThat(phone.page.locator("#clock")).containsText("settled since");
        assertThat(phone.box("Minutes it had run")).hasValue("16");
        phone.box("Amps").fill("12.1");
        phone.page.clock().fastForward("05:00");
        assertThat(phone.box("Minutes it had run")).hasValue("16");
        phone.page.clock().fastForward("07:00:00");
        phone.page.reload();
        assertThat(phone.page.locator("#start")).isVisible();
    }

    @Test
    void theNumberPadsKeyGoesOnToTheNextBox() {
        String unit = unit("Heron 21");
        phone.go("visit/?unit=" + unit);
        phone.box("Return air").click();
        for (String text : List.of("78", "50", "92", "57,5", "117", "12.1")) {
            phone.page.keyboard().type(text);
            phone.page.keyboard().press("Enter");
        }
        assertThat(phone.box("Amps")).hasValue("12.1");
        assertThat(phone.box("Supply air")).hasValue("57,5");
        assertThat(phone.page.locator("#save")).isFocused();
        assertEquals(1, server.store.visits().count());
    }

    @Test
    void aDoubtfulReadingIsAskedAboutAndKeptWithATap() {
        String unit = unit("Heron 27");
        phone.go("visit/?unit=" + unit);
        phone.typeReadings("0.1");
        assertThat(phone.page.locator("#amps-question")).containsText("both conductors");
        phone.tap(AriaRole.BUTTON, "It is so: keep it");
        assertThat(phone.page.locator("#amps-question")).hasText("Kept as it was read.");
        phone.box("Volts under load").fill("118");
        assertThat(phone.page.locator("#amps-question")).hasText("Kept as it was read.");
        phone.box("Amps").fill("0.2");
        assertThat(phone.page.locator("#amps-question")).containsText("both conductors");
        phone.box("Amps").fill("0.1");
        phone.save();
        assertThat(phone.page.locator("#done .state")).hasText("retake");
        assertEquals("0.1", server.get("api/visits/" + lastVisit(unit)).body().path("visit").path("boxes").path("amps").asText());
    }

    private String lastVisit(String unit) {
        JsonNode visits = server.get("api/units/" + unit).body().path("visits");
        return visits.get(visits.size() - 1).path("id").asText();
    }

    @Test
    void whatHasTheFocusIsNotHiddenUnderTheVerdict() {
        String unit = unit("Heron 28");
        for (int height : new int[] {740, 400}) {
            phone.page.setViewportSize(360, height);
            phone.go("visit/?unit=" + unit);
            phone.typeReadings("15.4");
            phone.page.evaluate("() => { document.activeElement.blur(); window.scrollTo(0, 0); }");
            int looked = 0;
            for (int i = 0; i < 45; i++) {
                phone.page.keyboard().press("Tab");
                Object hidden = phone.page.evaluate(HIDDEN);
                assertEquals("", hidden == null ? "" : hidden, "with " + height + " pixels");
                looked += hidden == null ? 0 : 1;
            }
            assertTrue(looked > 20, "it went through the form");
        }
    }

    @Test
    void lookingKeepsNothingAndWhatWasTypedOnAnotherDayIsSaid() {
        String unit = unit("Heron 26");
        phone.page.clock().install();
        phone.go("visit/?unit=" + unit);
        assertThat(phone.page.locator("#live-said")).containsText("should be");
        String first = phone.page.locator("#visited_at").inputValue();
        phone.page.clock().fastForward("26:00:00");
        phone.page.reload();
        assertThat(phone.page.locator("#visited_at")).not().hasValue(first);
        phone.box("Return air").fill("78");
        assertThat(phone.page.locator("#kept")).containsText("is kept on this device");
        phone.page.reload();
        assertThat(phone.box("Return air")).hasValue("78");
        assertThat(phone.page.locator("#typed-before")).isEmpty();
        phone.page.clock().fastForward("26:00:00");
        phone.page.reload();
        assertThat(phone.box("Return air")).hasValue("78");
        assertThat(phone.page.locator("#typed-before")).containsText("Typed earlier and not saved: a visit of ");
        phone.tap(AriaRole.BUTTON, "Leave that and start anew");
        assertThat(phone.page.locator("#typed-before")).isEmpty();
        assertThat(phone.box("Return air")).hasValue("");
    }

    @Test
    void aPhotoTakenWithoutASignalIsMadeSmallerKeptAndSentAfterItsVisit() throws IOException {
        String unit = unit("Heron 22");
        phone.takeAlong(DEPOT);
        phone.signal(false);
        phone.go("visit/?unit=" + unit);
        phone.typeReadings("12.3");
        phone.page.locator("#note summary").click();
        phone.choose("a coil");
        phone.page.locator("#photo-file").setInputFiles(new FilePayload("coil.jpg", "image/jpeg", picture(3_000, 2_000)));
        assertThat(phone.page.locator("#photo-list img")).hasCount(1);
        phone.page.waitForTimeout(300);
        phone.page.close();
        phone.newTab();
        phone.go("visit/?unit=" + unit);
        assertThat(phone.page.locator("#note-now")).hasText("1 photo");
        phone.save();
        assertThat(phone.page.locator("#done")).containsText("1 photo waits to be sent with the visit.");
        phone.signal(true);
        phone.go("phone/");
        phone.page.waitForCondition(() -> photos(unit).size() == 1);
        assertEquals("coil", photos(unit).get(0).path("subject").asText());
        BufferedImage kept = ImageIO.read(URI.create(server.address("api/photos/" + photos(unit).get(0).path("id").asText())).toURL());
        assertEquals(1_600, kept.getWidth());
        assertEquals(1_067, kept.getHeight());
        assertEquals(List.of(), phone.complaints);
    }

    private JsonNode photos(String unit) {
        return server.get("api/units/" + unit).body().path("photos");
    }

    private static byte[] picture(int width, int height) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "jpeg", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    @Test
    void afterWorkItIsReadAgainAndTheDifferenceIsSaid() {
        String unit = unit("Heron 23");
        phone.go("visit/?unit=" + unit);
        phone.typeReadings("14.6");
        phone.box("When").fill(LocalDateTime.now(ZoneId.of("America/Denver")).minusHours(1).toString().substring(0, 16));
        phone.choose("louver");
        phone.page.locator("#work summary").click();
        phone.choose("condenser coil cleaned");
        assertThat(phone.page.locator("#work-cautions")).containsText("let the coil dry 30 minutes");
        phone.save();
        phone.tap(AriaRole.LINK, "Read again after the work");
        assertThat(phone.page.locator("#title")).hasText("Read again");
        assertThat(phone.box("Read by")).hasValue("Ines");
        assertThat(phone.page.locator("[name=supply_at]:checked")).hasValue("discharge");
        assertThat(phone.box("Amps")).hasValue("");
        assertThat(phone.page.locator("#amps-last")).containsText("14.6 A");
        phone.typeReadings("12.2");
        assertThat(phone.page.locator("#live-said")).containsText("Before and after: split");
        phone.picture("read-again");
        phone.save();
        assertThat(phone.page.locator("#done")).containsText(Pattern.compile("amps -1\\d\\.\\d ±\\s\\d\\.\\d\\s% in the same weather\\. The work helped\\."));
    }

    @Test
    void aReplacedUnitLeadsToThePlateOfTheNewMachine() {
        String unit = unit("Heron 24");
        phone.go("visit/?unit=" + unit);
        phone.typeReadings("3.1");
        phone.page.locator("#work summary").click();
        phone.choose("unit replaced");
        phone.save();
        phone.tap(AriaRole.LINK, "Record the new machine");
        assertThat(phone.page.locator("[name=kind]:checked")).hasValue("replacement");
        assertThat(phone.box("Name")).hasValue("Heron 24");
        phone.box("Serial").fill("N 77 431");
        phone.box("Amps on the plate").fill("11.8");
        phone.box("Who you are").fill("Ines");
        phone.box("Why").fill("compressor seized");
        phone.tap(AriaRole.BUTTON, "Record it");
        assertThat(phone.page.locator("#label")).hasText("Heron 24");
        assertThat(phone.page.locator("#plate")).containsText("N 77 431");
        assertThat(phone.page.locator("#changes")).containsText("Took the place of another machine");
        assertThat(phone.page.locator("#changes")).containsText("by Ines");
        assertThat(phone.page.locator("#changes")).containsText("compressor seized");
        phone.page.locator("#changes a").first().click();
        assertThat(phone.page.locator("#place")).containsText("out of service");
        assertThat(phone.page.locator("#visits tbody tr")).hasCount(2);
    }

    @Test
    void anOptionalReadingIsOfferedWithWhatItWouldSettle() {
        String unit = unit("Heron 25");
        server.saveVisit(unit, "dirty-1", visit("2025-08-01T14:05", "14.6"));
        phone.go("visit/?unit=" + unit);
        phone.typeReadings("14.8");
        assertThat(phone.page.locator(".proposed .why-proposed")).containsText(Pattern.compile("Worth taking now \\(\\d+\\smin\\): "));
        assertThat(phone.page.locator("#optional")).not().hasAttribute("open", "");
    }

    private static Map<String, String> visit(String at, String amps) {
        Map<String, String> boxes = RunningServer.soundVisit(at);
        boxes.put("amps", amps);
        return boxes;
    }

    @Test
    void aUnitsHistoryIsReadWithoutASignalInTheSameWords() {
        String unit = unit("Heron 29");
        server.saveVisit(unit, "dirty-1", visit("2025-08-01T14:05", "14.6"));
        phone.takeAlong(DEPOT);
        phone.go("unit/?unit=" + unit);
        assertThat(phone.page.locator("#visits tbody tr")).hasCount(2);
        List<String> online = List.of(phone.page.locator("#state").textContent(), phone.page.locator("#sentence").textContent(),
                phone.page.locator("#visits tbody").textContent());
        phone.signal(false);
        phone.page.reload();
        assertThat(phone.page.locator("#kept-here")).containsText("No signal: this is kept on this phone, as the server knew it on");
        assertEquals(online, List.of(phone.page.locator("#state").textContent(), phone.page.locator("#sentence").textContent(),
                phone.page.locator("#visits tbody").textContent()));
        assertThat(phone.page.locator("#split-chart")).isHidden();
        phone.picture("unit-offline");
        phone.go("unit/?unit=nobody");
        assertThat(phone.page.locator("#failure")).containsText("this unit is not kept on this phone");
        assertEquals(List.of(), phone.complaints);
    }

    @Test
    void theDemoIsMarkedWithoutASignalToo() {
        assertTrue(DemoFleet.load(server.store));
        phone.takeAlong("Lake Orrin");
        phone.signal(false);
        for (String path : List.of("phone/", "visit/?unit=LO-02", "new-unit/")) {
            phone.go(path);
            assertThat(phone.page.locator(".demo")).containsText("Demo fleet, all invented.");
        }
    }

    @Test
    void anAddressThatIsNotTrustedIsSaid() {
        phone.page.addInitScript("Object.defineProperty(window, 'isSecureContext', { value: false })");
        phone.go("phone/");
        assertThat(phone.page.locator("#untrusted")).containsText("without a signal these pages do not open");
    }

    @Test
    void itCanBeInstalled() {
        phone.go("phone/");
        assertThat(phone.page.locator("#untrusted")).isHidden();
        phone.page.waitForFunction("async () => (await navigator.serviceWorker.ready).active.state === 'activated'");
        CDPSession session = phone.context.newCDPSession(phone.page);
        Set<String> missing = new HashSet<>();
        for (JsonElement error : session.send("Page.getInstallabilityErrors").getAsJsonArray("installabilityErrors")) {
            missing.add(error.getAsJsonObject().get("errorId").getAsString());
        }
        missing.remove(NO_WINDOW_OF_ITS_OWN);
        assertEquals(Set.of(), missing);
        assertTrue(session.send("Page.getAppManifest").getAsJsonArray("errors").isEmpty());
        List<Integer> sizes = new ArrayList<>();
        for (String icon : List.of("shared/icon-192.png", "shared/icon-512.png")) {
            phone.page.waitForResponse(server.address(icon), () -> phone.page.navigate(server.address(icon)));
            sizes.add(((Number) phone.page.evaluate("document.images[0].naturalWidth")).intValue());
        }
        assertEquals(List.of(192, 512), sizes);
    }
}
