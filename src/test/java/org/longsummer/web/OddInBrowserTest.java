package org.longsummer.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Long records, names in any script, numbers and dates in the reader's own manner. */
class OddInBrowserTest {
    private static final Clock SUMMER = Clock.fixed(Instant.parse("2026-07-20T18:00:00Z"), ZoneOffset.UTC);
    private static final String LONG = "Donaudampfschifffahrtsgesellschaftswohnmobilvermietung 7 rear";
    private static final List<String> NAMES = List.of("مالك الحزين ٧ أمامي", "🦩🛻 ✨ 7", "鷺七号 前", "Ο Ερωδιός 7", LONG, "<b>Heron</b> & \"sons\"");

    private RunningServer server;

    @BeforeEach
    void start() {
        server = new RunningServer(SUMMER);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    @Test
    void namesOfAnyScriptAndLengthStandWhereTheyBelongAndWidenNothing() {
        Map<String, String> units = new TreeMap<>();
        for (String name : NAMES) {
            String unit = server.addUnit(name, "Ferrow Flats");
            Map<String, String> boxes = RunningServer.soundVisit("2026-07-18T11:30");
            boxes.put("technician", name);
            boxes.put("notes", name + "\n" + name);
            RunningServer.Answer saved = server.saveVisit(unit, "odd-" + NAMES.indexOf(name), boxes);
            assertEquals(201, saved.status(), () -> saved.body().toString());
            units.put(unit, name);
        }
        for (int width : new int[] {360, 1280}) {
            try (Visitor visitor = new Visitor(server, width, ColorScheme.LIGHT, "en-US")) {
                look(visitor, "yard/");
                look(visitor, "phone/");
                units.forEach((unit, name) -> {
                    look(visitor, "unit/?unit=" + unit + "&visit=odd-" + NAMES.indexOf(name));
                    assertThat(visitor.at("#label")).hasText(name);
                    assertThat(visitor.at("#visits tbody")).containsText(name);
                    assertThat(visitor.at("#visit .as-written")).hasText(name + "\n" + name);
                    look(visitor, "visit/?unit=" + unit);
                    assertThat(visitor.at("#unit bdi").first()).hasText(name);
                    look(visitor, "moved/?unit=" + unit + "&kind=replacement");
                });
                visitor.picture("odd-name");
                assertEquals(List.of(), visitor.complaints);
            }
        }
    }

    private static void look(Visitor visitor, String path) {
        visitor.go(path);
        assertFalse(visitor.isWiderThanTheScreen(), () -> path + " is wider than the screen");
    }

    @Test
    void twoHundredVisitsAreThereAndTheLatestComeFirst() {
        String unit = server.addUnit("Heron 30", "Ferrow Flats");
        for (int i = 0; i < 200; i++) {
            String at = "%d-%02d-%02dT14:05".formatted(2022 + i / 50, 5 + i % 50 / 10, 1 + i % 10 * 2);
            assertEquals(201, server.saveVisit(unit, "v" + i, RunningServer.soundVisit(at)).status());
        }
        try (Visitor visitor = Visitor.onPhone(server)) {
            visitor.go("unit/?unit=" + unit);
            assertThat(visitor.at("#visits tbody tr")).hasCount(25);
            assertThat(visitor.at("#visits tbody tr").first()).containsText("Sep 19, 2025");
            assertThat(visitor.at("#split-chart")).hasAttribute("aria-label", Pattern.compile(".*200 visits.*"));
            visitor.tap(AriaRole.BUTTON, "Show all 200 visits");
            assertThat(visitor.at("#visits tbody tr")).hasCount(200);
            assertFalse(visitor.isWiderThanTheScreen());
            visitor.picture("two-hundred");
            visitor.go("visit/?unit=" + unit);
            visitor.box("Amps").fill("12.1");
            assertThat(visitor.at("#live-said")).containsText("12.1");
            assertEquals(List.of(), visitor.complaints);
        }
    }

    @Test
    void numbersAndDatesAreWrittenAsTheReaderChooses() {
        String unit = server.addUnit("Heron 31", "Ferrow Flats");
        server.saveVisit(unit, "v1", RunningServer.soundVisit("2026-07-18T14:30"));
        try (Visitor visitor = new Visitor(server, 1280, ColorScheme.LIGHT, "de-DE")) {
            visitor.go("unit/?unit=" + unit + "&visit=v1");
            assertThat(visitor.at("#visits tbody")).containsText("12,1 A");
            assertThat(visitor.at("#visit dl")).containsText("25,6 °C");
            assertThat(visitor.at("#plate")).containsText("375 m");
            visitor.go("reading/");
            visitor.choose("16.5");
            visitor.choose("2026-07-02");
            visitor.choose("°F, feet");
            visitor.go("unit/?unit=" + unit + "&visit=v1");
            assertThat(visitor.at("#visits tbody")).containsText("12.1 A");
            assertThat(visitor.at("#visits tbody")).containsText("2026-07-18, 14:30");
            assertThat(visitor.at("#visit dl")).containsText("78.0 °F");
            visitor.go("visit/?unit=" + unit + "&correct=v1");
            assertThat(visitor.box("Supply air")).hasValue("57,5");
            assertEquals(List.of(), visitor.complaints);
        }
    }
}
