package org.longsummer.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page.PdfOptions;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longsummer.access.Reach;
import org.longsummer.demo.DemoFleet;
import org.longsummer.store.VisitRound;

/** The manager's pages: the yard and what is done from it, the round on screen and paper, the round typed in, the season. */
class YardInBrowserTest {
    private static final Clock AUTUMN = Clock.fixed(Instant.parse("2026-09-20T15:00:00Z"), ZoneOffset.UTC);

    private RunningServer server;

    @BeforeEach
    void start() {
        server = new RunningServer(AUTUMN);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private void demo() {
        assertTrue(DemoFleet.load(server.store));
        server.store.rounds().make(new VisitRound("r1", "", LocalDate.parse("2026-09-21"), "Ada", AUTUMN.instant()),
                server.store.standings().ofUnits(List.of("FF-01", "FF-02", "FF-10", "FF-16", "LO-02"), Reach.EVERYWHERE));
        server.post("api/yard/planned-work", Map.of("id", "p1", "choice", Map.of("units", List.of("FF-01", "FF-10")), "boxes",
                Map.of("works", "condenser_coil", "planned_for", "2026-09-25")));
        while (server.store.judging().adviseAgain() > 0) {
            continue;
        }
    }

    @ParameterizedTest
    @CsvSource({"360, LIGHT", "360, DARK", "1280, LIGHT", "1280, DARK"})
    void everyPageCanBeUsedByEverybody(int width, ColorScheme scheme) {
        demo();
        try (Visitor visitor = new Visitor(server, width, scheme, "en-US")) {
            StringBuilder faults = new StringBuilder();
            for (String path : List.of("yard/", "yard/?seen=unvisited&order=unvisited&begun=2026-01-01", "round/", "round/?round=r1", "round/?round=none",
                    "typed-in/?round=r1", "season/")) {
                visitor.go(path);
                if (path.equals("yard/")) {
                    visitor.tap(AriaRole.BUTTON, "Choose all");
                    visitor.tap(AriaRole.BUTTON, "Plan work");
                }
                visitor.page.evaluate("() => document.querySelectorAll('details').forEach(fold => { fold.open = true; })");
                visitor.page.waitForTimeout(150);
                visitor.picture("manager-" + path.replaceAll("[^a-z0-9A-Z]+", "-"));
                visitor.broken().forEach(fault -> faults.append(path).append(": ").append(fault).append('\n'));
                visitor.tooSmallToPress().forEach(fault -> faults.append(path).append(": too small: ").append(fault).append('\n'));
                visitor.complaints.forEach(fault -> faults.append(path).append(": ").append(fault).append('\n'));
                visitor.complaints.clear();
                if (visitor.isWiderThanTheScreen()) {
                    faults.append(path).append(": wider than the screen\n");
                }
            }
            assertEquals("", faults.toString());
        }
    }

    /** What is asked for less is folded away there, and one tap brings it. */
    @Test
    void aPhoneShowsTheFirstUnitWithoutScrolling() {
        demo();
        try (Visitor visitor = Visitor.onPhone(server)) {
            visitor.go("yard/");
            assertThat(visitor.at("#rows li").first().locator(".unit-link")).isVisible();
            assertTrue(visitor.at("#rows li .unit-link").first().boundingBox().y < 740, "the first unit lies below the first screen");
            assertThat(visitor.at(".head a[href='../season/']")).isHidden();
            visitor.at(".head .fold").click();
            assertThat(visitor.at(".head a[href='../season/']")).isVisible();
            assertThat(visitor.at("#sentences")).containsText("drifting");
            assertThat(visitor.at("#sentences a[href='?state=steady']")).isHidden();
            visitor.at("#sentences .fold").click();
            assertThat(visitor.at("#sentences a[href='?state=steady']")).isVisible();
            visitor.picture("yard-phone");
            assertEquals(List.of(), visitor.broken());
            assertEquals(List.of(), visitor.tooSmallToPress());
            assertEquals(false, visitor.isWiderThanTheScreen());
        }
    }

    /** As after a change of the method: a line says how far it is, and goes when it is over. */
    @Test
    void theYardSaysThatUnitsAreJudgedAgainAsLongAsTheyAre() {
        demo();
        server.store.rejudging().begin();
        assertTrue(server.store.rejudging().step());
        int percent = server.store.rejudging().progress().orElseThrow().percentDone();
        try (Visitor visitor = Visitor.onPhone(server)) {
            visitor.go("yard/");
            assertThat(visitor.at("#judged-again")).containsText("judged again: " + percent + " % done");
            visitor.picture("yard-judged-again");
            assertEquals(List.of(), visitor.broken());
            assertEquals(false, visitor.isWiderThanTheScreen());
            while (server.store.rejudging().step()) {
                continue;
            }
            assertThat(visitor.at("#judged-again")).isHidden(new LocatorAssertions.IsHiddenOptions().setTimeout(20_000));
            visitor.go("yard/");
            assertThat(visitor.at("#rows li").first()).isVisible();
            assertThat(visitor.at("#judged-again")).isHidden();
            assertEquals(List.of(), visitor.complaints);
        }
    }

    @Test
    void anEmptyFleetHasWordsEverywhere() {
        try (Visitor visitor = Visitor.onLaptop(server)) {
            visitor.go("round/");
            assertThat(visitor.at("#about")).containsText("No round yet");
            visitor.go("season/");
            assertThat(visitor.at("#about")).containsText("No units yet");
            visitor.go("typed-in/");
            visitor.page.waitForURL(Pattern.compile(".*/round/$"));
            assertEquals(List.of(), visitor.complaints);
        }
    }

    /** From the list to the paper and back by keys alone: a search, a tick, a round, a row typed in and saved with Enter, once. */
    @Test
    void aDayIsPlannedAndTypedInByKeyboardAlone() {
        demo();
        try (Visitor visitor = Visitor.onLaptop(server)) {
            visitor.go("yard/");
            visitor.at("#text").focus();
            visitor.page.keyboard().type("ff-02");
            visitor.page.keyboard().press("Enter");
            visitor.page.waitForURL(Pattern.compile(".*text=ff-02.*"));
            assertThat(visitor.at("#found")).containsText("1 unit");
            Locator tick = visitor.at(".tick input").first();
            tick.focus();
            visitor.page.keyboard().press("Space");
            assertThat(visitor.at(".chosen-count")).hasText("1 chosen");
            visitor.page.getByRole(AriaRole.BUTTON, new com.microsoft.playwright.Page.GetByRoleOptions().setName("Make a round")).focus();
            visitor.page.keyboard().press("Enter");
            visitor.at("#by").focus();
            visitor.page.keyboard().type("Ada");
            visitor.page.keyboard().press("Enter");
            visitor.page.waitForURL(Pattern.compile(".*/round/\\?round=.*"));
            assertThat(visitor.at(".stop")).hasCount(1);
            visitor.page.getByRole(AriaRole.LINK, new com.microsoft.playwright.Page.GetByRoleOptions().setName("Type it in")).focus();
            visitor.page.keyboard().press("Enter");
            visitor.page.waitForURL(Pattern.compile(".*/typed-in/.*"));
            typeIn(visitor);
            assertEquals(List.of(), visitor.complaints);
        }
    }

    private void typeIn(Visitor visitor) {
        visitor.at("#technician").fill("Ines");
        int before = server.store.visits().count();
        visitor.at("[name=visited_at]").fill("2026-09-20T08:00");
        for (Map.Entry<String, String> box : Map.of("run_minutes", "18", "return_db_f", "78", "return_rh_pct", "50", "ambient_db_f", "92", "supply_db_f", "57.5",
                "volts", "117").entrySet()) {
            visitor.at("[name=" + box.getKey() + "]").fill(box.getValue());
        }
        visitor.at("[name=amps]").fill("125");
        assertThat(visitor.at("#s1-amps-question")).not().isEmpty();
        visitor.at("[name=amps]").fill("12.1");
        assertThat(visitor.at("#s1-amps-question")).isEmpty();
        visitor.at("[name=amps]").press("Enter");
        assertThat(visitor.at(".done-note")).containsText("Saved.");
        assertEquals(before + 1, server.store.visits().count());
        visitor.page.reload();
        assertThat(visitor.at("#about")).containsText("all typed in");
        assertThat(visitor.at(".done-note")).containsText("It is saved.");
    }

    @Test
    void chosenRowsAreHandedOverAsAFile() throws IOException {
        demo();
        try (Visitor visitor = Visitor.onLaptop(server)) {
            visitor.go("yard/?depot=Lake+Orrin");
            visitor.tap(AriaRole.BUTTON, "Choose all");
            Download file = visitor.page.waitForDownload(() -> visitor.tap(AriaRole.BUTTON, "CSV"));
            int found = server.get("api/yard?depot=Lake%20Orrin").body().path("found").asInt();
            assertEquals(found + 1, Files.readString(file.path()).lines().count());
        }
    }

    /** Looked at by whoever builds: target/screenshots/round.pdf. */
    @Test
    void theRoundPrintsWithACodeAndBoxesForEachUnit() {
        demo();
        try (Visitor visitor = Visitor.onLaptop(server)) {
            visitor.go("round/?round=r1");
            assertThat(visitor.at(".stop img.code")).hasCount(5);
            assertThat(visitor.at(".stop").first().locator(".blanks li")).hasCount(16);
            byte[] pdf = visitor.page.pdf(new PdfOptions().setPath(Path.of("target", "screenshots", "round.pdf")).setFormat("A4").setPrintBackground(false));
            assertTrue(pdf.length > 10_000);
        }
    }
}
