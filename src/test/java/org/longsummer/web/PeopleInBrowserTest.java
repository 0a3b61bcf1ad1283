package org.longsummer.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Cookie;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Signing in, one's account, the people and what was changed, in a real browser; pictures are left in {@code target/screenshots}. */
class PeopleInBrowserTest {
    /** Folders of the pages that are looked at here. */
    static final Set<String> PAGES = Set.of("sign-in", "people", "changes", "account", "welcome");

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

    private Page open(int width, int height, ColorScheme scheme) {
        BrowserContext context = BrowserOnThisMachine.shared().newContext(new NewContextOptions().setViewportSize(width, height)
                .setColorScheme(scheme).setLocale("en-US").setTimezoneId("America/Denver"));
        opened.add(context);
        Page page = context.newPage();
        page.setDefaultTimeout(10_000);
        Complaints.note(page, server, complaints);
        return page;
    }

    private static void look(Page page, String name) {
        Screenshots.take(page, name);
        assertEquals(List.of(), Accessibility.violations(page), name);
        assertTrue(page.evaluate("document.documentElement.scrollWidth <= innerWidth").equals(true), name + " is not wider than the screen");
    }

    private static Locator box(Page page, String label) {
        return page.getByLabel(Pattern.compile("^" + label)).first();
    }

    private static void press(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name)).first().click();
    }

    private static void signIn(Page page, String name) {
        box(page, "Name").fill(name);
        box(page, "Password").fill(Staff.PASSWORD);
        press(page, "Sign in");
    }

    @ParameterizedTest
    @CsvSource({"360, 740, LIGHT", "360, 740, DARK", "1280, 800, LIGHT", "1280, 800, DARK"})
    void everyPageOfPeopleIsReadableAndClean(int width, int height, ColorScheme scheme) {
        server.addUnit("Heron 7", Staff.OURS);
        new Staff(server).at("Ines Calder");
        Page page = open(width, height, scheme);
        String ending = "-" + width + "-" + scheme.name().toLowerCase(Locale.ROOT);
        page.navigate(server.address("people/"));
        page.waitForURL(Pattern.compile(".*/sign-in/\\?to=people.*"));
        look(page, "sign-in" + ending);
        box(page, "Password").fill("wrong one entirely");
        box(page, "Name").fill(Staff.ADMINISTRATOR);
        press(page, "Sign in");
        assertThat(page.locator(".problems")).containsText("Name and password do not belong together.");
        look(page, "sign-in-refused" + ending);
        signIn(page, Staff.ADMINISTRATOR);
        page.waitForURL(Pattern.compile(".*/people/$"));
        assertThat(page.locator("#people > li")).hasCount(5);
        page.locator("#people summary").first().click();
        look(page, "people" + ending);
        page.navigate(server.address("changes/"));
        assertThat(page.locator("#changes tbody tr").first()).isVisible();
        look(page, "changes" + ending);
        page.navigate(server.address("account/"));
        assertThat(page.locator("#sessions li")).hasCount(1);
        page.locator("summary").first().click();
        look(page, "account" + ending);
        assertEquals(List.of(), complaints);
    }

    @Test
    void theFirstAdministratorIsMadeOnThePagesAndChoosesAPasswordByALink() {
        Page page = open(1280, 800, ColorScheme.LIGHT);
        page.navigate(server.address("yard/"));
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("People")).click();
        assertThat(page.locator("#open")).containsText("everything stands open on this machine");
        box(page, "Name").fill("Ada Merrow");
        press(page, "Add, and make a link");
        String link = page.locator("#done code").textContent();
        look(page, "people-link");
        Page other = open(360, 740, ColorScheme.LIGHT);
        other.navigate(link);
        assertThat(other.locator("#whose")).containsText("Ada Merrow");
        box(other, "Password").fill("summer2026ada");
        press(other, "Keep this password");
        assertThat(other.locator(".problems")).containsText("among those that are tried first");
        look(other, "welcome-refused");
        box(other, "Password").fill(Staff.PASSWORD);
        other.getByText("Show what I type").click();
        assertThat(box(other, "Password")).hasAttribute("type", "text");
        press(other, "Keep this password");
        assertThat(other.locator("#title")).hasText("Your password is kept");
        assertFalse(other.url().contains("#"), "the key no longer stands in the address");
        look(other, "welcome-done");
        other.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Sign in")).click();
        signIn(other, "Ada Merrow");
        other.waitForURL(Pattern.compile(".*/yard/$"));
        assertThat(other.locator(".reader")).containsText("Ada Merrow");
        page.navigate(server.address("yard/"));
        page.waitForURL(Pattern.compile(".*/sign-in/.*"));
        assertEquals(List.of(), complaints);
    }

    @Test
    void theKeyIsOutOfReachOfScriptsAndSignedOutWithAWord() {
        new Staff(server);
        Page page = open(1280, 800, ColorScheme.LIGHT);
        page.navigate(server.address("yard/"));
        signIn(page, "Ines Calder");
        page.waitForURL(Pattern.compile(".*/yard/$"));
        assertEquals("", page.evaluate("document.cookie"));
        Cookie cookie = page.context().cookies().get(0);
        assertTrue(cookie.httpOnly && cookie.sameSite.name().equals("STRICT"));
        assertThat(page.getByRole(AriaRole.NAVIGATION, new Page.GetByRoleOptions().setName("Administration"))).hasCount(0);
        press(page, "Sign out");
        page.waitForURL(Pattern.compile(".*/sign-in/.*"));
        page.navigate(server.address("unit/?unit=nobody"));
        page.waitForURL(Pattern.compile(".*/sign-in/\\?to=unit.*"));
        assertEquals(List.of(), complaints);
    }

    @Test
    void signingInLeadsBackAndNeverElsewhere() {
        String unit = server.addUnit("Heron 7", Staff.OURS);
        new Staff(server);
        Page page = open(1280, 800, ColorScheme.LIGHT);
        page.navigate(server.address("unit/?unit=" + unit));
        page.waitForURL(Pattern.compile(".*/sign-in/.*"));
        signIn(page, "Ines Calder");
        page.waitForURL(Pattern.compile(".*/unit/\\?unit=" + unit));
        assertThat(page.locator("#label")).hasText("Heron 7");
        for (String to : List.of("https://elsewhere.example/", "//elsewhere.example/", "javascript:alert(1)", "../../elsewhere/", "\\\\elsewhere.example/")) {
            page.navigate(server.address("sign-in/?to=" + java.net.URLEncoder.encode(to, java.nio.charset.StandardCharsets.UTF_8)));
            page.waitForURL(Pattern.compile(Pattern.quote(server.address("yard/")) + ".*"));
        }
        assertEquals(List.of(), complaints);
    }

    @Test
    void aPhoneIsKeptSignedInAndCutOffFromTheAccountByKeyboard() {
        new Staff(server);
        Page phone = open(360, 740, ColorScheme.LIGHT);
        phone.navigate(server.address("yard/"));
        phone.getByText("This is my own phone").click();
        box(phone, "What the phone is called").fill("Ines’s phone");
        signIn(phone, "Ines Calder");
        phone.waitForURL(Pattern.compile(".*/yard/$"));
        assertTrue(phone.context().cookies().get(0).expires > Clock.systemUTC().millis() / 1000.0 + 300 * 86_400);
        Page desk = open(1280, 800, ColorScheme.LIGHT);
        desk.navigate(server.address("account/"));
        desk.waitForURL(Pattern.compile(".*/sign-in/.*"));
        box(desk, "Name").focus();
        desk.keyboard().type("Ines Calder");
        desk.keyboard().press("Tab");
        desk.keyboard().type(Staff.PASSWORD);
        desk.keyboard().press("Enter");
        desk.waitForURL(Pattern.compile(".*/account/$"));
        Locator cutOff = desk.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Cut off Ines’s phone"));
        cutOff.focus();
        desk.keyboard().press("Enter");
        assertThat(desk.locator("#done")).containsText("It is cut off.");
        phone.reload();
        phone.waitForURL(Pattern.compile(".*/sign-in/.*"));
        assertEquals(List.of(), complaints);
    }

    @Test
    void aProgramsKeyIsShownOnceAndWithdrawn() {
        server.addUnit("Heron 7", Staff.OURS);
        new Staff(server);
        Page page = open(1280, 800, ColorScheme.LIGHT);
        page.navigate(server.address("account/"));
        signIn(page, "Moss Tarrin");
        page.waitForURL(Pattern.compile(".*/account/$"));
        page.locator("summary").first().click();
        box(page, "What it is for").fill("shop system");
        box(page, "Your password, once more").fill(Staff.PASSWORD);
        press(page, "Make the key");
        String key = page.locator("#made code").textContent();
        look(page, "account-program");
        assertEquals(200, new Caller(server).with("Origin", null).with("Authorization", "Bearer " + key).get("/api/yard").status());
        page.reload();
        assertThat(page.locator("#programs li")).containsText("shop system");
        assertThat(page.locator("#made")).isEmpty();
        press(page, "Withdraw shop system");
        assertThat(page.locator("#programs")).containsText("None.");
        assertEquals(401, new Caller(server).with("Origin", null).with("Authorization", "Bearer " + key).get("/api/yard").status());
        assertEquals(List.of(), complaints);
    }

    @Test
    void somebodyIsChangedClosedAndOpenedAgain() {
        server.addUnit("Heron 7", Staff.OURS);
        new Staff(server);
        Page page = open(1280, 800, ColorScheme.LIGHT);
        page.navigate(server.address("people/"));
        signIn(page, Staff.ADMINISTRATOR);
        Locator ines = page.locator("#people > li").filter(new Locator.FilterOptions().setHasText("Ines Calder"));
        ines.locator("summary").click();
        ines.getByText("all depots", new Locator.GetByTextOptions().setExact(true)).click();
        ines.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("Change").setExact(true)).click();
        assertThat(ines.locator("dl")).containsText("all depots");
        ines.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("Close the account")).click();
        assertThat(ines.locator("dl")).containsText("closed");
        ines.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("Open the account again")).click();
        assertThat(ines.locator("dl")).containsText("no password chosen yet");
        Locator ada = page.locator("#people > li").filter(new Locator.FilterOptions().setHasText(Staff.ADMINISTRATOR));
        ada.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName("Close the account")).click();
        assertThat(page.locator(".problems")).containsText("Nobody else can administer.");
        assertEquals(List.of(), complaints);
    }
}
