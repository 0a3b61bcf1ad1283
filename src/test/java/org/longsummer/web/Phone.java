package org.longsummer.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** One technician's phone: its own storage, with or without a signal. */
final class Phone implements AutoCloseable {

    final BrowserContext context;
    final List<String> complaints = new ArrayList<>();
    private final RunningServer server;
    Page page;

    Phone(Browser browser, RunningServer server, int width, int height, ColorScheme scheme, String locale) {
        this.server = server;
        context = browser.newContext(new NewContextOptions().setViewportSize(width, height).setColorScheme(scheme).setLocale(locale)
                .setTimezoneId("America/Denver").setHasTouch(width < 500));
        context.setDefaultTimeout(15_000);
        context.onRequest(request -> {
            if (!request.url().startsWith(server.address("")) && !request.url().startsWith("data:") && !request.url().startsWith("blob:")) {
                complaints.add("asked another host: " + request.url());
            }
        });
        newTab();
    }

    Phone(Browser browser, RunningServer server) {
        this(browser, server, 360, 740, ColorScheme.LIGHT, "en-US");
    }

    /** As after the old tab was killed. */
    void newTab() {
        page = context.newPage();
        page.onPageError(complaints::add);
        page.onDialog(dialog -> dialog.accept());
    }

    void go(String path) {
        page.navigate(server.address(path));
    }

    void signal(boolean there) {
        context.setOffline(!there);
    }

    /** Takes depots along, and waits until the pages are kept too. */
    void takeAlong(String... depots) {
        go("phone/");
        for (String depot : depots) {
            page.getByLabel(Pattern.compile("^" + depot)).check();
        }
        tap(AriaRole.BUTTON, "Take along now");
        assertThat(page.locator("#kept-now")).containsText("are kept here, as the server knew them");
        page.waitForFunction("async () => (await navigator.serviceWorker.ready).active.state === 'activated'");
    }

    void tap(AriaRole role, String name) {
        page.getByRole(role, new Page.GetByRoleOptions().setName(name)).first().click();
    }

    void choose(String word) {
        page.getByText(word, new Page.GetByTextOptions().setExact(true)).first().click();
    }

    Locator box(String label) {
        return page.getByLabel(Pattern.compile("^" + label)).first();
    }

    /** The readings of a sound unit, in °F. */
    void typeReadings(String amps) {
        box("Minutes it had run").fill("18");
        box("Return air").fill("78");
        box("Return humidity").fill("50");
        box("Outdoor air").fill("92");
        box("Supply air").fill("57.5");
        box("Volts under load").fill("117");
        box("Amps").fill(amps);
        sayWhoReads();
        assertThat(page.locator("#live-said .state")).isVisible();
    }

    /** The name is folded away once it is known. */
    private void sayWhoReads() {
        if (!box("Read by").isVisible()) {
            page.locator("#who > summary").click();
        }
        box("Read by").fill("Ines");
    }

    String liveSentence() {
        return page.locator("#live-said .sentence").textContent().replace('\u00a0', ' ');
    }

    void save() {
        tap(AriaRole.BUTTON, "Save this visit");
    }

    void picture(String name) {
        Screenshots.take(page, "phone-" + name);
    }

    @Override
    public void close() {
        context.close();
    }
}
