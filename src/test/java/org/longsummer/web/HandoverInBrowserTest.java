package org.longsummer.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A manager brings files of his own: he is asked what they leave open, sees what would happen, and takes them in. */
class HandoverInBrowserTest {
    @TempDir
    Path directory;
    private RunningServer server;

    @BeforeEach
    void start() {
        PlaywrightAssertions.setDefaultAssertionTimeout(60_000);
        server = new RunningServer(new TurningClock("2026-08-20T18:00:00Z"));
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private Path file(String name, String text) throws IOException {
        return Files.write(directory.resolve(name), text.getBytes(Charset.forName("windows-1252")));
    }

    @ParameterizedTest
    @CsvSource({"360, LIGHT", "1280, LIGHT", "360, DARK"})
    void filesOfTheFleetsOwnAreAskedAboutTriedOutAndTakenIn(int width, ColorScheme scheme) throws IOException {
        Path units = file("our units.csv", "Unit No.;Depot;BTU;RLA;Serial;Paint\nHERON-7;Quarry Bend;13,500;12;SO1-5I;red\nWREN-2;Quarry Bend;15,000;13;SO1-6I;blue\n");
        Path visits = file("checks june.csv", "Asset No.;Checked on;Return temp;Vent temp;Amp draw;Remarks\nHERON-7;5/6/2026 11:30;78,5;57,5 \u00b0F;12,1 A;\u00dcberpr\u00fcft\n"
                + "WREN-2;6/6/2026 12:10;77;58;hot;\n");
        try (Visitor visitor = new Visitor(server, width, scheme, "en-US")) {
            visitor.go("import/");
            visitor.page.getByLabel("Files").setInputFiles(new Path[] {units, visits});
            visitor.tap(AriaRole.BUTTON, "Look through these files");
            assertThat(visitor.at("#questions h2")).hasText("Before these files can be read");
            look(visitor, "handover-questions");
            answerAll(visitor);
            assertThat(visitor.at("#trial")).containsText("1 row has to be put right in the file");
            look(visitor, "handover-refused");
            assertEquals(0, server.store.units().count());
            visitor.tap(AriaRole.BUTTON, "Choose other files");
            file("checks june.csv", Files.readString(visits, Charset.forName("windows-1252")).replace("hot", "12,3"));
            visitor.page.getByLabel("Files").setInputFiles(new Path[] {units, visits});
            visitor.tap(AriaRole.BUTTON, "Look through these files");
            assertThat(visitor.at("#questions h2")).hasText("Before these files can be read");
            answerAll(visitor);
            assertThat(visitor.at("#trial")).containsText("4 new, 0 would change");
            look(visitor, "handover-tried");
            visitor.tap(AriaRole.BUTTON, "Take these files");
            assertThat(visitor.at("#taken")).containsText("2 units added, 0 changed; 2 visits stored");
            assertEquals(2, server.store.visits().count());
            again(visitor, units, visits);
            assertEquals(List.of(), visitor.complaints);
        }
    }

    /** What was said once is remembered; a changed cell is shown from what to what. */
    private void again(Visitor visitor, Path units, Path visits) throws IOException {
        file("our units.csv", Files.readString(units).replace(";13;", ";14;"));
        visitor.go("import/");
        visitor.page.getByLabel("Files").setInputFiles(new Path[] {units, visits});
        visitor.tap(AriaRole.BUTTON, "Look through these files");
        assertThat(visitor.at("#trial")).containsText("0 new, 1 would change, 3 stay as they are");
        assertThat(visitor.at("#trial")).containsText("Rated amps, A from \u201c13\u201d to \u201c14\u201d");
        look(visitor, "handover-changed");
    }

    private static void look(Visitor visitor, String name) {
        visitor.picture(name);
        assertEquals(List.of(), visitor.broken(), name);
        assertEquals(List.of(), visitor.tooSmallToPress(), name);
        assertFalse(visitor.isWiderThanTheScreen(), name);
    }

    private static void answerAll(Visitor visitor) {
        while (visitor.at("#trial").count() == 0) {
            for (String answer : List.of("day_first", "point", "windows-1252")) {
                visitor.page.evaluate("answer => document.querySelectorAll(`#questions input[value=${answer}]`).forEach(choice => choice.click())", answer);
            }
            if (visitor.at("#questions select[name$='/zone']").count() > 0) {
                visitor.at("#questions select[name$='/zone']").first().selectOption("America/Denver");
            }
            visitor.page.evaluate("document.getElementById('questions').dataset.seen = 'yes'");
            visitor.tap(AriaRole.BUTTON, "Go on");
            visitor.page.waitForSelector("#trial, #questions:not([data-seen])", new Page.WaitForSelectorOptions().setTimeout(60_000));
        }
    }
}
