package org.longsummer.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.longsummer.demo.DemoFleet;

/** From a unit to its weighing, other prices, a plan, and the sheet in the owner's hands. */
class MoneyInBrowserTest {
    private static final Clock SUMMER = Clock.fixed(Instant.parse("2026-07-05T15:00:00Z"), ZoneOffset.UTC);

    private static RunningServer server;

    @BeforeAll
    static void start() {
        server = new RunningServer(SUMMER);
        assertTrue(DemoFleet.load(server.store));
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    private static void nothingWrong(Visitor visitor) {
        assertEquals(List.of(), visitor.broken());
        assertEquals(List.of(), visitor.tooSmallToPress());
        assertEquals(List.of(), visitor.complaints);
        assertEquals(false, visitor.isWiderThanTheScreen());
    }

    @Test
    void aManagerWeighsChangesAPriceAndPlans() {
        try (Visitor visitor = Visitor.onLaptop(server)) {
            visitor.go("unit/?unit=FF-10");
            assertThat(visitor.at("#ahead")).containsText("What lies ahead");
            assertThat(visitor.at("#ahead")).containsText("Quitting");
            assertThat(visitor.at("#chart-note")).containsText("what lies ahead if nothing is done");
            visitor.picture("unit-ahead");
            visitor.tap(AriaRole.LINK, "Keep, clean, repair or replace");
            assertThat(visitor.at("#options thead")).containsText("(advised)");
            assertThat(visitor.at("#options .total td")).hasCount(4);
            visitor.unfold("Put in a quote");
            visitor.at("#work").selectOption("unit_replaced");
            visitor.box("Price").fill("1,750");
            visitor.box("From whom").fill("Harbour Cooling");
            visitor.tap(AriaRole.BUTTON, "Weigh with this quote");
            assertThat(visitor.at("#quote")).containsText("1750 USD to replace the unit, from Harbour Cooling");
            visitor.picture("weighing");
            nothingWrong(visitor);
            visitor.tap(AriaRole.LINK, "Change prices and figures");
            assertThat(visitor.at(".figure:visible")).hasCount(5);
            visitor.box("call-out").fill("minus");
            visitor.tap(AriaRole.BUTTON, "Keep these prices");
            assertThat(visitor.at(".problems")).containsText("call-out");
            visitor.box("call-out").fill("40");
            visitor.tap(AriaRole.BUTTON, "Keep these prices");
            assertThat(visitor.at(".figure.changed")).hasCount(1);
            visitor.picture("prices");
            nothingWrong(visitor);
            plan(visitor);
        }
    }

    /** What is seen and what pays are said apart; on a phone one option stands below the other, and nothing has to be pushed aside to be read. */
    @Test
    void anOwnerReadsBothOnAPhone() {
        try (Visitor visitor = Visitor.onPhone(server)) {
            visitor.go("unit/?unit=FF-01");
            assertThat(visitor.at("#sentence")).containsText("most likely");
            assertThat(visitor.at("#sentence")).not().containsText("Clean");
            assertThat(visitor.at("#advice")).containsText("Against it, where it pays");
            assertThat(visitor.at("#ahead")).containsText("What pays now");
            visitor.picture("unit-what-pays");
            visitor.go("weighing/?unit=FF-01");
            assertThat(visitor.at("#options")).isHidden();
            assertThat(visitor.at("#one-by-one .option")).hasCount(4);
            assertThat(visitor.at("#one-by-one .option.advised h3")).containsText("(advised)");
            assertEquals(List.of(), visitor.scrolledSideways());
            visitor.picture("weighing");
            nothingWrong(visitor);
        }
    }

    private static void plan(Visitor visitor) {
        visitor.go("planned/?unit=FF-10");
        visitor.at("#works input[value=capacitor]").check();
        visitor.tap(AriaRole.BUTTON, "Plan it");
        assertThat(visitor.at(".problems")).containsText("Say by when.");
        visitor.box("By when").fill("2026-07-20");
        visitor.tap(AriaRole.BUTTON, "Plan it");
        assertThat(visitor.at("#list")).containsText("replace the run capacitor");
        assertThat(visitor.at("#sums")).containsText("Ferrow Flats");
        visitor.picture("planned");
        nothingWrong(visitor);
        visitor.go("unit/?unit=FF-10");
        assertThat(visitor.at("#ahead")).containsText("Jul 20, 2026: ");
        visitor.go("planned/");
        visitor.tap(AriaRole.BUTTON, "Done");
        assertThat(visitor.at("#list")).not().containsText("Van FF10");
        visitor.tap(AriaRole.BUTTON, "Done");
        assertThat(visitor.at("#list")).containsText("Nothing is planned here");
    }

    @Test
    void anOwnerOpensHisLinkOnAPhoneUntilItIsWithdrawn() {
        String address;
        try (Visitor visitor = Visitor.onLaptop(server)) {
            visitor.go("sheet/?unit=FF-02");
            visitor.tap(AriaRole.BUTTON, "Make a link");
            address = visitor.at("#links code").textContent();
            assertThat(visitor.at(".pictures svg")).hasCount(2);
            nothingWrong(visitor);
        }
        try (Visitor owner = new Visitor(server, 360, ColorScheme.DARK, "en-US")) {
            owner.go(address.replaceFirst("^.*/sheet/", "sheet/"));
            assertThat(owner.at("#sheet")).containsText("Advice from readings");
            owner.picture("sheet-by-link");
            nothingWrong(owner);
        }
        try (Visitor visitor = Visitor.onPhone(server)) {
            visitor.go("sheet/?unit=FF-02");
            visitor.tap(AriaRole.BUTTON, "Withdraw");
            assertThat(visitor.at("#links li")).containsText(Pattern.compile("withdrawn"));
            visitor.go("yard/");
            visitor.go(address.replaceFirst("^.*/sheet/", "sheet/"));
            assertThat(visitor.at("#failure")).containsText("does not open anything any more");
        }
    }
}
