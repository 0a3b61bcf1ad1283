package org.longsummer.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page.WaitForFunctionOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A technician's day where there is no signal, in a real browser: nothing is lost, nothing is doubled, what clashes is shown. */
class OfflineInBrowserTest {
    private static final String DEPOT = "Ferrow Flats";

    private final List<Phone> phones = new ArrayList<>();
    private RunningServer server;

    @BeforeEach
    void startServer() {
        server = new RunningServer(Clock.systemUTC());
    }

    @AfterEach
    void stopServer() {
        phones.forEach(Phone::close);
        server.close();
    }

    private Phone phone() {
        Phone phone = new Phone(BrowserOnThisMachine.shared(), server);
        phones.add(phone);
        return phone;
    }

    /** A unit with a history of some seasons. */
    private String unit(String label) {
        String unit = server.addUnit(label, DEPOT);
        for (int year = 2023; year <= 2025; year++) {
            assertEquals(201, server.saveVisit(unit, unit + "-" + year, RunningServer.soundVisit(year + "-06-1" + (year % 10) + "T14:05")).status());
        }
        return unit;
    }

    private JsonNode rows(String unit) {
        return server.get("api/units/" + unit).body().path("visits");
    }

    /** Asks the phone's own database. */
    private static void nothingWaits(Phone phone) {
        phone.page.waitForFunction("""
                () => new Promise(resolve => {
                  const opening = indexedDB.open('longsummer');
                  opening.onsuccess = () => {
                    const reading = opening.result.transaction('outbox').objectStore('outbox').getAll();
                    reading.onsuccess = () => {
                      opening.result.close();
                      resolve(reading.result.every(item => item.state === 'sent'));
                    };
                  };
                })""", null, new WaitForFunctionOptions().setTimeout(60_000).setPollingInterval(100));
        assertThat(phone.page.locator("#waiting")).isEmpty();
    }

    @Test
    void aVisitWithoutASignalIsJudgedKeptAndSentByItself() {
        String unit = unit("Heron 7 front");
        Phone phone = phone();
        phone.takeAlong(DEPOT);
        phone.signal(false);
        phone.newTab();
        phone.go("phone/");
        assertThat(phone.page.locator("#which")).containsText("No signal");
        phone.box("Which unit").fill("5o15I");
        phone.picture("start-offline");
        phone.tap(AriaRole.LINK, "Heron 7 front");
        assertThat(phone.page.locator("#how-fresh")).containsText("No signal: judged here, by the record of");
        assertThat(phone.page.locator("#amps-last")).containsText("12.1 A");
        phone.typeReadings("12.3");
        String said = phone.liveSentence();
        phone.picture("visit-offline");
        phone.save();
        assertThat(phone.page.locator("#title")).hasText("Kept on this phone");
        phone.picture("kept");
        assertThat(phone.page.locator("#waiting")).hasText("1 entry waits to be sent");
        assertEquals(3, server.store.visits().count());
        phone.signal(true);
        nothingWaits(phone);
        assertEquals(4, server.store.visits().count());
        assertEquals(said, server.get("api/units/" + unit).body().path("standing").path("sentence").asText());
        assertEquals(List.of(), phone.complaints);
    }

    @Test
    void aTabKilledBetweenTypingAndSavingLosesNothing() {
        String unit = unit("Heron 8");
        Phone phone = phone();
        phone.takeAlong(DEPOT);
        phone.signal(false);
        phone.go("visit/?unit=" + unit);
        phone.typeReadings("12,3");
        phone.choose("dirty");
        assertThat(phone.page.locator("#kept")).containsText("is kept on this device");
        phone.page.waitForTimeout(300);
        phone.page.close();
        phone.newTab();
        phone.go("visit/?unit=" + unit);
        assertThat(phone.box("Amps")).hasValue("12,3");
        assertThat(phone.page.locator("input[name=filter_condition][value=dirty]")).isChecked();
        phone.save();
        assertThat(phone.page.locator("#title")).hasText("Kept on this phone");
        phone.newTab();
        phone.go("visit/?unit=" + unit);
        assertThat(phone.box("Amps")).hasValue("");
        assertThat(phone.page.locator("#amps-last")).containsText("12.3 A");
    }

    @Test
    void twoPhonesOnOneUnitAreBothStoredAndWhatChangesIsSaid() {
        String unit = unit("Heron 9");
        Phone first = phone();
        Phone second = phone();
        first.takeAlong(DEPOT);
        second.takeAlong(DEPOT);
        first.signal(false);
        second.signal(false);
        first.go("visit/?unit=" + unit);
        first.typeReadings("15.4");
        first.box("When").fill(LocalDateTime.now(ZoneOffset.UTC).minusDays(1).withNano(0).toString().substring(0, 16));
        first.save();
        assertThat(first.page.locator("#title")).hasText("Kept on this phone");
        second.go("visit/?unit=" + unit);
        second.typeReadings("15.6");
        String alone = second.liveSentence();
        second.save();
        first.signal(true);
        nothingWaits(first);
        second.signal(true);
        nothingWaits(second);
        assertEquals(5, rows(unit).size());
        String together = server.get("api/units/" + unit).body().path("standing").path("sentence").asText();
        assertTrue(!together.equals(alone), () -> "the second visit alone says the same: " + alone);
        second.go("phone/");
        assertThat(second.page.locator("#told-items")).containsText("By the server, which knows more of this unit or of the fleet: " + together);
        second.picture("told-otherwise");
        second.tap(AriaRole.BUTTON, "Seen");
        assertThat(second.page.locator("#told-items li")).hasCount(0);
    }

    @Test
    void halfASendingStoresOnce() {
        String unit = unit("Heron 10");
        Phone phone = phone();
        phone.takeAlong(DEPOT);
        phone.go("visit/?unit=" + unit);
        phone.page.route("**/visits?*", route -> {
            route.fetch();
            route.abort();
        });
        phone.typeReadings("12.2");
        phone.save();
        assertThat(phone.page.locator("#title")).hasText("Kept on this phone");
        assertEquals(4, server.store.visits().count());
        phone.page.unroute("**/visits?*");
        phone.go("phone/");
        nothingWaits(phone);
        assertEquals(4, server.store.visits().count());
    }

    @Test
    void aVisitCorrectedOnBothSidesIsShownAndSettledByAPerson() {
        String unit = unit("Heron 11");
        Phone phone = phone();
        phone.takeAlong(DEPOT);
        phone.signal(false);
        phone.go("visit/?unit=" + unit + "&correct=" + unit + "-2025");
        assertThat(phone.box("Amps")).hasValue("12.1");
        phone.box("Amps").fill("12.6");
        phone.box("What was wrong").fill("misread");
        phone.save();
        assertThat(phone.page.locator("#title")).hasText("Kept on this phone");
        Map<String, String> theirs = new HashMap<>(RunningServer.soundVisit("2025-06-15T14:05"));
        theirs.put("reason", "another slip");
        theirs.put("amps", "12.4");
        assertEquals(201, server.post("api/visits/" + unit + "-2025/correction", Map.of("id", "office", "boxes", theirs)).status());
        phone.signal(true);
        phone.go("phone/");
        assertThat(phone.page.locator("#items")).containsText("This visit was corrected or withdrawn meanwhile.");
        phone.picture("conflict");
        phone.tap(AriaRole.BUTTON, "Put mine in its place");
        nothingWaits(phone);
        List<String> counting = new ArrayList<>();
        rows(unit).forEach(row -> {
            if (row.path("counts").asBoolean()) {
                counting.add(row.path("amps").path("measured").path("text").asText());
            }
        });
        assertEquals(List.of("12.1 A", "12.1 A", "12.6 A"), counting);
        assertEquals(5, rows(unit).size());
    }

    @Test
    void aUnitDeletedMeanwhileLosesNoVisit() {
        server.post("api/demo", "");
        Phone phone = phone();
        String depot = server.store.depots().all().get(0).name();
        phone.takeAlong(depot);
        String unit = server.store.units().ofDepots(List.of(depot)).get(0).id();
        phone.signal(false);
        phone.go("visit/?unit=" + unit);
        phone.typeReadings("12.3");
        phone.save();
        assertThat(phone.page.locator("#title")).hasText("Kept on this phone");
        assertEquals(200, server.delete("api/demo").status());
        phone.signal(true);
        phone.go("phone/");
        assertThat(phone.page.locator("#items")).containsText("There is no unit of this name.");
        phone.picture("unit-deleted");
        phone.tap(AriaRole.BUTTON, "Enter the unit again from this phone");
        nothingWaits(phone);
        assertEquals(1, rows(unit).size());
    }

    @Test
    void aNewUnitAndItsVisitAreEnteredWithoutASignal() {
        String known = unit("Heron 12");
        Phone phone = phone();
        phone.takeAlong(DEPOT);
        phone.signal(false);
        newUnit(phone, "Heron 13", "");
        phone.typeReadings("12.1");
        phone.save();
        assertThat(phone.page.locator("#waiting")).hasText("2 entries wait to be sent");
        newUnit(phone, "Heron twelve", "so15i");
        phone.typeReadings("12.4");
        phone.save();
        assertThat(phone.page.locator("#waiting")).hasText("4 entries wait to be sent");
        phone.signal(true);
        assertThat(phone.page.locator("#waiting")).hasText("2 entries wait to be sent");
        phone.go("phone/");
        assertThat(phone.page.locator("#items")).containsText("A unit with this serial is there already: Heron 12.");
        phone.tap(AriaRole.BUTTON, "It is that machine: Heron 12");
        nothingWaits(phone);
        assertEquals(2, server.store.units().count());
        assertEquals(4, rows(known).size());
        assertEquals(5, server.store.visits().count());
    }

    private static void newUnit(Phone phone, String name, String serial) {
        phone.go("new-unit/");
        phone.tap(AriaRole.BUTTON, "Keep this unit");
        assertThat(phone.page.locator(".problems")).containsText("A unit needs a name.");
        phone.box("Name").fill(name);
        phone.box("Depot").fill(DEPOT);
        phone.box("Serial").fill(serial);
        phone.box("Nominal size").fill("13,500");
        phone.tap(AriaRole.BUTTON, "Keep this unit");
        assertThat(phone.page.locator("#unit")).containsText(name);
    }

    @Test
    void aDayOfTwentyFiveVisitsWithoutASignal() {
        for (int i = 0; i < 25; i++) {
            server.addUnit("Van " + (i + 1), DEPOT);
        }
        Phone phone = phone();
        phone.takeAlong(DEPOT);
        phone.signal(false);
        for (int i = 0; i < 25; i++) {
            phone.go("visit/?unit=van-" + (i + 1));
            phone.typeReadings("12." + i % 10);
            phone.save();
            assertThat(phone.page.locator("#title")).hasText("Kept on this phone");
        }
        phone.newTab();
        phone.go("phone/");
        assertThat(phone.page.locator("#items li")).hasCount(25);
        phone.tap(AriaRole.BUTTON, "Send now");
        assertThat(phone.page.locator("#sent")).containsText("25 entries are still here: Longsummer did not answer.");
        phone.signal(true);
        nothingWaits(phone);
        assertEquals(25, server.store.visits().count());
        assertEquals(List.of(), phone.complaints);
    }

    @Test
    void celsiusAndDecimalCommaWithoutASignal() {
        String unit = unit("Heron 14");
        Phone phone = new Phone(BrowserOnThisMachine.shared(), server, 360, 740, ColorScheme.DARK, "de-DE");
        phones.add(phone);
        phone.takeAlong(DEPOT);
        phone.signal(false);
        phone.go("visit/?unit=" + unit);
        phone.box("Return air").fill("25,6");
        phone.box("Return humidity").fill("50");
        phone.box("Outdoor air").fill("33,3");
        phone.box("Supply air").fill("14,2");
        phone.box("Amps").fill("12,1");
        assertThat(phone.page.locator("#live-said")).containsText("11,4 °C, expected");
        phone.box("Outdoor air").fill("93");
        assertThat(phone.page.locator("#ambient_db-question")).not().isEmpty();
        phone.picture("celsius-dark");
        phone.box("Outdoor air").fill("3 3,x");
        phone.save();
        assertThat(phone.page.locator(".problems")).containsText("A number in °C belongs here.");
        phone.box("Outdoor air").fill("33,3");
        phone.save();
        assertThat(phone.page.locator("#title")).hasText("Kept on this phone");
        phone.signal(true);
        nothingWaits(phone);
        assertEquals(4, server.store.visits().count());
    }

    @Test
    void aFullStorageIsSaid() {
        String unit = unit("Heron 15");
        Phone phone = phone();
        phone.takeAlong(DEPOT);
        phone.page.addInitScript("IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); };");
        phone.go("visit/?unit=" + unit);
        phone.signal(false);
        phone.typeReadings("12.3");
        assertThat(phone.page.locator("#kept")).containsText("This device cannot keep what you type");
        phone.save();
        assertThat(phone.page.locator(".problems")).containsText("This phone could not keep the visit, and it could not be sent.");
        assertThat(phone.box("Amps")).hasValue("12.3");
        phone.signal(true);
        phone.save();
        assertThat(phone.page.locator("#title")).hasText("Saved");
        assertEquals(4, server.store.visits().count());
    }

    @Test
    void aStickerOpensTheVisitOfItsUnitWithAndWithoutASignal() {
        String unit = unit("Heron 16");
        Phone phone = phone();
        phone.takeAlong(DEPOT);
        phone.go("u/" + unit);
        assertThat(phone.page).hasURL(Pattern.compile(".*/visit/\\?unit=" + unit));
        phone.signal(false);
        phone.go("u/" + unit);
        assertThat(phone.page.locator("#unit")).containsText("Heron 16");
        phone.signal(true);
        phone.go("unit/?unit=" + unit);
        Locator code = phone.page.locator("#sticker img");
        phone.page.locator("#sticker summary").click();
        assertThat(code).isVisible();
        assertTrue((Boolean) code.evaluate("image => image.decode().then(() => image.naturalWidth > 0)"));
        phone.picture("sticker");
    }
}
