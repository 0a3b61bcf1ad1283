package org.longsummer.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longsummer.demo.DemoFleet;
import org.longsummer.evidence.Project;

/** Every page of the demo fleet, on a phone and on a laptop, in light and in dark: open to everybody, large enough, within the screen. */
class AccessibilityInBrowserTest {
    private static final Clock AUTUMN = Clock.fixed(Instant.parse("2026-09-20T15:00:00Z"), ZoneOffset.UTC);
    /** Addresses of pages, and for some what is pressed there before they are looked at; {@code unfold}: all that is folded is opened. */
    private static final Map<String, String> PAGES = pages();

    private static RunningServer server;

    private static Map<String, String> pages() {
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("yard/", "");
        pages.put("yard/?state=steady&depot=Lake+Orrin&condition=refrigerant_loss", "");
        pages.put("unit/?unit=FF-01", "unfold");
        pages.put("unit/?unit=FF-10&visit=D0306", "");
        pages.put("unit/?unit=FF-16", "");
        pages.put("unit/?unit=nobody", "");
        pages.put("visit/", "");
        pages.put("visit/?unit=LO-02", "unfold");
        pages.put("new-unit/", "#save");
        pages.put("edit-unit/?unit=FF-02", "");
        pages.put("moved/?unit=FF-03", "[value=places]");
        pages.put("moved/?unit=FF-03&kind=replacement", "");
        pages.put("weighing/?unit=LO-04", "unfold");
        pages.put("prices/?unit=FF-01", "[value=all]");
        pages.put("planned/?unit=FF-10", "");
        pages.put("planned/", "");
        pages.put("sheet/?unit=LO-12", "");
        pages.put("depots/", ".card button");
        pages.put("instruments/", "");
        pages.put("business/", "");
        pages.put("reading/", "");
        pages.put("import/", "#send");
        pages.put("phone/", "");
        pages.put("season/", "");
        pages.put("signs/", "");
        pages.put("round/", "");
        pages.put("typed-in/?round=nothing", "");
        return pages;
    }

    @BeforeAll
    static void start() {
        server = new RunningServer(AUTUMN);
        assertTrue(DemoFleet.load(server.store));
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @ParameterizedTest
    @CsvSource({"360, LIGHT", "1280, DARK"})
    void everyPageCanBeUsedByEverybody(int width, ColorScheme scheme) {
        try (Visitor visitor = new Visitor(server, width, scheme, "en-US")) {
            StringBuilder faults = new StringBuilder();
            PAGES.forEach((path, before) -> look(visitor, path, before, faults));
            assertEquals("", faults.toString());
        }
    }

    private static void look(Visitor visitor, String path, String before, StringBuilder faults) {
        visitor.go(path);
        assertThat(visitor.at(".demo")).containsText("Demo fleet");
        if (before.equals("unfold")) {
            visitor.page.evaluate("() => document.querySelectorAll('details').forEach(fold => { fold.open = true; })");
        } else if (!before.isEmpty()) {
            visitor.at(before).first().click();
        }
        visitor.page.waitForTimeout(100);
        visitor.picture("all-" + path.replaceAll("[^a-z0-9A-Z]+", "-"));
        visitor.broken().forEach(fault -> faults.append(path).append(": ").append(fault).append('\n'));
        visitor.tooSmallToPress().forEach(fault -> faults.append(path).append(": too small: ").append(fault).append('\n'));
        visitor.complaints.forEach(fault -> faults.append(path).append(": ").append(fault).append('\n'));
        visitor.complaints.clear();
        if (visitor.isWiderThanTheScreen()) {
            faults.append(path).append(": wider than the screen\n");
        }
    }

    /** Those that the demo fleet shows are looked at here, those of people by {@code PeopleInBrowserTest}. */
    @Test
    void noPageIsForgotten() {
        Set<String> looked = PAGES.keySet().stream().map(path -> path.substring(0, path.indexOf('/'))).collect(Collectors.toCollection(TreeSet::new));
        looked.addAll(PeopleInBrowserTest.PAGES);
        assertEquals(Project.files(Path.of("web"), name -> name.equals("index.html")).stream().map(page -> page.getParent().getFileName().toString())
                .collect(Collectors.toCollection(TreeSet::new)), looked, "every folder of web/ with a page is looked at; add a new page to PAGES");
    }

    /** More than level AA asks, since it is read in the sun. */
    @ParameterizedTest
    @CsvSource({"LIGHT", "DARK"})
    void whatIsReadOutdoorsHasAContrastOfSevenToOne(ColorScheme scheme) {
        try (Visitor visitor = new Visitor(server, 360, scheme, "en-US")) {
            for (String path : List.of("phone/", "unit/?unit=FF-01", "visit/?unit=FF-01")) {
                visitor.go(path);
                if (path.startsWith("visit")) {
                    visitor.box("Return air").fill("25");
                    assertThat(visitor.at("#return_db-question")).containsText("Celsius");
                }
                assertEquals(List.of(), visitor.tooFaint(), path);
            }
            visitor.page.evaluate("() => document.documentElement.style.setProperty('--soft', '#888888')");
            assertFalse(visitor.tooFaint().isEmpty(), "the rule can fail");
        }
    }

    @Test
    void theRulesCanFail() {
        try (Visitor visitor = Visitor.onPhone(server)) {
            visitor.go("reading/");
            visitor.page.evaluate("""
                    () => {
                      document.querySelector('main').insertAdjacentHTML('beforeend', '<img src="../shared/icon.svg"><button id="small">x</button>');
                      document.querySelector('#small').style.minHeight = '20px';
                    }""");
            assertTrue(visitor.broken().stream().anyMatch(fault -> fault.startsWith("image-alt")), () -> visitor.broken().toString());
            assertFalse(visitor.tooSmallToPress().isEmpty());
        }
    }
}
