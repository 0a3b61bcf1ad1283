package org.longsummer.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages as people use them, in a real browser; pictures of them are left in {@code target/screenshots}. */
class PagesInBrowserTest {

    private final List<String> complaints = new ArrayList<>();
    private final List<BrowserContext> opened = new ArrayList<>();
    private RunningServer server;

    @BeforeEach
    void startServer() {
        server = new RunningServer(Clock.systemUTC());
    }

    @AfterEach
    void stopServer() {
        opened.forEach(BrowserContext::close);
        server.close();
    }

    /** A page that notes every complaint of the browser and every request to another host. */
    private Page open(int width, int height, ColorScheme scheme) {
        BrowserContext context = BrowserOnThisMachine.shared().newContext(new NewContextOptions().setViewportSize(width, height)
                .setColorScheme(scheme).setLocale("en-US").setTimezoneId("America/Denver").setHasTouch(width < 500));
        opened.add(context);
        Page page = context.newPage();
        page.setDefaultTimeout(10_000);
        Complaints.note(page, server, complaints);
        return page;
    }

    private void picture(Page page, String name) {
        Screenshots.take(page, name);
    }

    private static void tap(Page page, AriaRole role, String name) {
        page.getByRole(role, new Page.GetByRoleOptions().setName(name)).first().click();
    }

    private static Locator box(Page page, String label) {
        return page.getByLabel(Pattern.compile("^" + label)).first();
    }

    @ParameterizedTest
    @CsvSource({"360, 740", "1280, 800"})
    void fromAnEmptyStartToACorrectedVisit(int width, int height) {
        Page page = open(width, height, ColorScheme.LIGHT);
        page.navigate(server.address(""));
        assertThat(page).hasURL(Pattern.compile(".*/yard/$"));
        picture(page, "first-start-" + width);
        tap(page, AriaRole.LINK, "Enter the first unit");
        addUnit(page, width);
        typeVisit(page, width);
        tap(page, AriaRole.BUTTON, "Save this visit");
        assertThat(page.locator("#title")).hasText("Saved");
        picture(page, "saved-" + width);
        tap(page, AriaRole.LINK, "See it on the chart");
        assertThat(page.locator("#visit h2")).containsText("Visit of");
        assertThat(page.locator("#split-chart")).hasAttribute("aria-label", Pattern.compile(".*1 visits.*"));
        picture(page, "unit-one-visit-" + width);
        correct(page);
        withdraw(page, width);
        assertEquals(List.of(), complaints);
    }

    private void addUnit(Page page, int width) {
        assertThat(page).hasTitle("New unit – Longsummer");
        tap(page, AriaRole.BUTTON, "Keep this unit");
        assertThat(page.locator(".problems")).containsText("A unit needs a name.");
        box(page, "Name").fill("Heron 7 front");
        box(page, "Vehicle").fill("Heron 7");
        box(page, "Depot").fill("Ferrow Flats");
        box(page, "Altitude").fill("1,230");
        box(page, "Nominal size").fill("13,500");
        box(page, "Amps on the plate").fill("12.4");
        page.getByText("running amps of the whole unit").click();
        page.getByText("straight down").click();
        picture(page, "new-unit-" + width);
        tap(page, AriaRole.BUTTON, "Keep this unit");
        assertThat(page.locator("#label")).hasText("Heron 7 front");
        picture(page, "unit-empty-" + width);
    }

    private void typeVisit(Page page, int width) {
        tap(page, AriaRole.LINK, "New visit");
        tap(page, AriaRole.LINK, "Heron 7 front");
        page.getByText("clean", new Page.GetByTextOptions().setExact(true)).first().click();
        tap(page, AriaRole.BUTTON, "It starts now");
        assertThat(page.locator("#clock")).containsText("settled at");
        box(page, "Minutes it had run").fill("18");
        box(page, "Return air").fill("78");
        box(page, "Return humidity").fill("50");
        box(page, "Outdoor air").fill("92");
        assertThat(page.locator("#live-said")).containsText("should be");
        picture(page, "visit-expectation-" + width);
        box(page, "Supply air").fill("57,5");
        page.getByText("louver", new Page.GetByTextOptions().setExact(true)).click();
        box(page, "Volts under load").fill("117");
        box(page, "Amps").fill("0.1");
        assertThat(page.locator("#amps-question")).containsText("both conductors");
        picture(page, "visit-question-" + width);
        box(page, "Amps").fill("12.1");
        assertThat(page.locator("#amps-question")).isEmpty();
        assertThat(page.locator("#live-said .state")).isVisible();
        page.reload();
        assertThat(box(page, "Supply air")).hasValue("57,5");
        assertThat(page.locator("#clock")).containsText("settled at");
        assertThat(page.locator("#live-said .state")).isVisible();
        box(page, "Read by").fill("Ines");
        picture(page, "visit-verdict-" + width);
        Screenshots.take(page, "visit-as-seen-" + width);
    }

    private void correct(Page page) {
        tap(page, AriaRole.LINK, "Correct this visit");
        assertThat(page.locator("#title")).hasText("Correct a visit");
        assertThat(box(page, "Supply air")).hasValue("57,5");
        box(page, "Supply air").fill("56,9");
        tap(page, AriaRole.BUTTON, "Save this visit");
        assertThat(page.locator(".problems")).containsText("A correction needs its reason.");
        box(page, "What was wrong").fill("read it too far from the louver");
        tap(page, AriaRole.BUTTON, "Save this visit");
        tap(page, AriaRole.LINK, "See it on the chart");
        assertThat(page.locator("#visits tbody tr")).hasCount(2);
        assertThat(page.locator("#visits tr.struck")).hasCount(1);
        assertThat(page.locator("#visits tr.struck")).containsText(Pattern.compile("corrected by Ines, .*: read it too far from the louver"));
    }

    private void withdraw(Page page, int width) {
        page.locator("#visit summary").filter(new Locator.FilterOptions().setHasText("Withdraw")).click();
        assertThat(box(page, "Who you are")).hasValue("Ines");
        box(page, "Why it should not count").fill("it was the rear unit");
        tap(page, AriaRole.BUTTON, "Withdraw this visit");
        assertThat(page.locator("#visits tr.struck")).hasCount(2);
        assertThat(page.locator("#state")).hasText("not judged yet");
        picture(page, "unit-withdrawn-" + width);
    }

    @ParameterizedTest
    @CsvSource({"360, 740, LIGHT", "360, 740, DARK", "1280, 800, LIGHT", "1280, 800, DARK"})
    void threeSeasonsAreReadable(int width, int height, ColorScheme scheme) {
        fillThreeSeasons();
        Page page = open(width, height, scheme);
        String name = width + "-" + scheme.name().toLowerCase(java.util.Locale.ROOT);
        page.navigate(server.address("yard/"));
        assertThat(page.locator("#rows li")).hasCount(6);
        picture(page, "yard-" + name);
        tap(page, AriaRole.LINK, "Heron 1 front");
        assertThat(page.locator("#split-chart")).hasAttribute("aria-label", Pattern.compile(".*visits.*"));
        picture(page, "unit-" + name);
        page.locator("#visits a").first().click();
        assertThat(page.locator("#visit h2")).isVisible();
        page.locator("#visit summary").first().click();
        page.getByText("as read", new Page.GetByTextOptions().setExact(true)).first().click();
        picture(page, "unit-visit-" + name);
        assertTrue(page.evaluate("document.documentElement.scrollWidth <= innerWidth").equals(true), "the page is not wider than the screen");
        assertEquals(List.of(), complaints);
    }

    private void fillThreeSeasons() {
        for (int number = 1; number <= 6; number++) {
            String unit = server.addUnit("Heron " + number + " front", number < 4 ? "Ferrow Flats" : "Quarry Bend");
            int visit = 0;
            for (String day : List.of("2024-05-12", "2024-06-20", "2024-08-03", "2025-05-20", "2025-07-08", "2025-08-30", "2026-05-16",
                    "2026-06-21", "2026-08-02")) {
                Map<String, String> boxes = RunningServer.soundVisit(day + "T13:30");
                double dirt = number == 1 ? Math.max(0, visit - 3) * 0.35 : 0;
                boxes.put("ambient_db_f", Double.toString(84 + 4 * (visit % 4)));
                boxes.put("amps", Double.toString(Math.round((11.2 + 0.42 * (visit % 4) + dirt + 0.1 * (visit % 2)) * 10) / 10.0));
                boxes.put("supply_db_f", Double.toString(57.0 + dirt + 0.4 * (visit % 3)));
                if (number == 1 && visit == 7) {
                    boxes.put("work_done", "condenser_coil");
                }
                if (number != 6 || visit < 3) {
                    server.saveVisit(unit, "v" + number + "-" + visit, boxes);
                }
                visit++;
            }
        }
        Map<String, String> retake = RunningServer.soundVisit("2026-08-05T13:30");
        retake.put("amps", "0.1");
        server.saveVisit("heron-2-front", "retake", retake);
    }

    @Test
    void unitsOfMeasureAreTheReadersChoiceAndWhatWasTypedStays() {
        String unit = server.addUnit("Heron 7", "Ferrow Flats");
        Page page = open(360, 740, ColorScheme.LIGHT);
        page.navigate(server.address("visit/?unit=" + unit));
        box(page, "Return air").fill("25.5");
        assertThat(page.locator("#return_db-question")).containsText("Celsius");
        page.locator("#units").getByText("°C").click();
        assertThat(box(page, "Return air")).hasValue("25.5");
        assertThat(page.locator("#return_db-unit")).hasText("°C");
        assertThat(page.locator("#return_db-question")).isEmpty();
        assertEquals(List.of(), complaints);
    }

    @Test
    void theLastVisitsValueStandsBesideTheBox() {
        String unit = server.addUnit("Heron 7", "Ferrow Flats");
        server.saveVisit(unit, "v1", RunningServer.soundVisit("2026-05-18T11:30"));
        Page page = open(360, 740, ColorScheme.LIGHT);
        page.navigate(server.address("visit/?unit=" + unit));
        assertThat(page.locator("#amps-last")).containsText("12.1 A");
        assertThat(page.locator("#amps-last")).containsText("May 18, 2026");
        assertEquals(List.of(), complaints);
    }

    @Test
    void aServerThatDoesNotAnswerIsSaidAndTheVisitIsKeptAndSentLater() {
        String unit = server.addUnit("Heron 7", "Ferrow Flats");
        Page page = open(360, 740, ColorScheme.LIGHT);
        page.navigate(server.address("visit/?unit=" + unit));
        box(page, "Return air").fill("78");
        page.context().setOffline(true);
        tap(page, AriaRole.BUTTON, "Save this visit");
        assertThat(page.locator("#title")).hasText("Kept on this phone");
        assertThat(page.locator("main")).containsText("It is sent by itself as soon as there is a signal.");
        assertEquals(0, server.store.visits().count());
        page.context().setOffline(false);
        page.waitForCondition(() -> server.store.visits().count() == 1);
    }

    @Test
    void aVisitIsTypedAndSavedByKeyboardAlone() {
        String unit = server.addUnit("Heron 7", "Ferrow Flats");
        Page page = open(1280, 800, ColorScheme.LIGHT);
        page.navigate(server.address("visit/?unit=" + unit));
        box(page, "Return air").focus();
        page.keyboard().type("78");
        for (String text : List.of("50", "", "92", "", "57.5", "", "117", "12.1")) {
            page.keyboard().press("Tab");
            page.keyboard().type(text);
        }
        assertThat(box(page, "Amps")).hasValue("12.1");
        assertThat(page.locator("#live-said .state")).isVisible();
        page.keyboard().press("Enter");
        assertThat(page.locator("#save")).isFocused();
        assertEquals(0, server.store.visits().count(), "Enter in a box goes on and does not save");
        page.keyboard().press("Enter");
        assertThat(page.locator("#title")).hasText("Saved");
        assertEquals(1, server.store.visits().count());
    }

    @Test
    void theDemoIsBroughtMarkedOnEveryPageAndRemoved() {
        Page page = open(1280, 800, ColorScheme.LIGHT);
        page.navigate(server.address("yard/"));
        tap(page, AriaRole.LINK, "See the demo fleet");
        page.setDefaultTimeout(60_000);
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Bring the demo fleet")).click();
        page.waitForURL(Pattern.compile(".*/yard/$"));
        for (String path : List.of("yard/", "visit/", "new-unit/", "import/", "unit/?unit=FF-01")) {
            page.navigate(server.address(path));
            assertThat(page.locator(".demo")).containsText("Demo fleet");
        }
        picture(page, "demo-unit");
        page.navigate(server.address("yard/"));
        assertThat(page.locator("#rows li")).hasCount(40);
        picture(page, "demo-yard");
        page.navigate(server.address("import/"));
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Remove the demo fleet")).click();
        assertThat(page.locator("h1")).hasText("Nothing here yet");
        assertEquals(0, server.store.units().count());
        assertEquals(List.of(), complaints);
    }

    @Test
    void everyProblemOfAFileIsListed() throws java.io.IOException {
        Path file = java.nio.file.Files.createTempDirectory("files").resolve("my visits.csv");
        java.nio.file.Files.writeString(file, "unit_id,visited_at,return_db_f,supply_db_f\nnobody,,78,57\nnobody,2026-07-01T13:00,x,57\n");
        Page page = open(360, 740, ColorScheme.LIGHT);
        page.navigate(server.address("import/"));
        box(page, "Files").setInputFiles(file);
        tap(page, AriaRole.BUTTON, "Look through these files");
        assertThat(page.locator("#trial")).containsText("Nothing can be taken yet: 2 rows have to be put right in the file.");
        assertThat(page.locator("#trial")).containsText("my visits.csv, row 3");
        assertThat(page.locator("#trial")).containsText("return_db_f");
        picture(page, "import-problems");
    }

    @Test
    void anUnknownUnitIsSaidInWords() {
        Page page = open(1280, 800, ColorScheme.LIGHT);
        page.navigate(server.address("unit/?unit=nobody"));
        assertThat(page.locator("#failure")).containsText("There is no unit of this name. Look for it in the yard.");
    }

    @Test
    void theYardsFilterIsInItsAddress() {
        fillThreeSeasons();
        Page page = open(1280, 800, ColorScheme.LIGHT);
        page.navigate(server.address("yard/"));
        page.locator("#sentences a").filter(new Locator.FilterOptions().setHasText("to retake")).click();
        assertThat(page).hasURL(Pattern.compile(".*state=retake.*"));
        assertThat(page.locator("#rows li")).hasCount(1);
        page.locator("#depot").selectOption("Quarry Bend");
        tap(page, AriaRole.BUTTON, "Show");
        assertThat(page).hasURL(Pattern.compile(".*depot=Quarry.*"));
        assertThat(page.locator("#found")).containsText("No unit fits this filter.");
        assertEquals(List.of(), complaints);
    }
}
