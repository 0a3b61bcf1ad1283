package org.longsummer.web;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.LoadState;
import com.microsoft.playwright.options.ServiceWorkerPolicy;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Somebody who looks at pages: at a screen of some size, in light or dark. What the browser complains of is noted. */
final class Visitor implements AutoCloseable {
    private static final String SMALL = """
            () => [...document.querySelectorAll('button, .button, summary, select, input:not([type=hidden]), nav a, textarea')]
              .filter(place => place.checkVisibility({ visibilityProperty: true }))
              .map(place => ({ place, box: (place.closest('.box, .choices label, .take') ?? place).getBoundingClientRect() }))
              .filter(({ box }) => box.height > 0 && (box.height < 47.5 || box.width < 47.5))
              .map(({ place, box }) => `${box.width.toFixed(0)} x ${box.height.toFixed(0)}: ${place.outerHTML.slice(0, 120)}`)""";

    /** Whatever should not have happened: errors of the page, and anything asked of another host. */
    final List<String> complaints = new ArrayList<>();
    final Page page;
    private final BrowserContext context;
    private final RunningServer server;
    private final String name;

    Visitor(RunningServer server, int width, ColorScheme scheme, String locale) {
        this.server = server;
        this.name = width + (scheme == ColorScheme.DARK ? "-dark" : "");
        context = BrowserOnThisMachine.shared().newContext(new NewContextOptions().setViewportSize(width, width < 500 ? 740 : 800)
                .setColorScheme(scheme).setLocale(locale).setTimezoneId("America/Denver").setHasTouch(width < 500)
                .setServiceWorkers(ServiceWorkerPolicy.BLOCK));
        context.setDefaultTimeout(15_000);
        page = context.newPage();
        Complaints.note(page, server, complaints);
        page.onDialog(dialog -> dialog.accept());
    }

    static Visitor onPhone(RunningServer server) {
        return new Visitor(server, 360, ColorScheme.LIGHT, "en-US");
    }

    static Visitor onLaptop(RunningServer server) {
        return new Visitor(server, 1280, ColorScheme.LIGHT, "en-US");
    }

    void go(String path) {
        page.navigate(server.address(path));
        page.waitForLoadState(LoadState.NETWORKIDLE);
    }

    void tap(AriaRole role, String words) {
        page.getByRole(role, new Page.GetByRoleOptions().setName(words)).first().click();
    }

    Locator box(String label) {
        return page.getByLabel(Pattern.compile("^" + label)).first();
    }

    void choose(String word) {
        page.getByText(word, new Page.GetByTextOptions().setExact(true)).first().click();
    }

    Locator at(String selector) {
        return page.locator(selector);
    }

    /** Opens a folded part, as a press on its line does. */
    void unfold(String words) {
        Locator line = page.locator("summary").filter(new Locator.FilterOptions().setHasText(words)).first();
        if (!Boolean.TRUE.equals(line.evaluate("line => line.parentElement.open"))) {
            line.click();
        }
    }

    void picture(String of) {
        Screenshots.take(page, of + "-" + name);
    }

    /** Where the page breaks the rules of WCAG 2.2 at level AA, as far as they can be checked by a program. */
    List<String> broken() {
        return Accessibility.violations(page);
    }

    /** What has a contrast below 7:1 (large text: 4.5:1), as WCAG asks at level AAA. */
    List<String> tooFaint() {
        return Accessibility.tooFaint(page);
    }

    /** What can be pressed and is smaller than 48 by 48 pixels; links within a sentence are as small as their line. */
    List<String> tooSmallToPress() {
        return texts(SMALL);
    }

    /** What is wider than its place and has to be pushed aside to be read. */
    List<String> scrolledSideways() {
        return texts("() => [...document.querySelectorAll('main *')].filter(place => place.clientWidth > 0 && place.scrollWidth > place.clientWidth + 1"
                + " && ['auto', 'scroll'].includes(getComputedStyle(place).overflowX)).map(place => place.outerHTML.slice(0, 120))");
    }

    private List<String> texts(String question) {
        return ((List<?>) page.evaluate(question)).stream().map(Object::toString).toList();
    }

    boolean isWiderThanTheScreen() {
        return Boolean.TRUE.equals(page.evaluate("document.documentElement.scrollWidth > innerWidth"));
    }

    @Override
    public void close() {
        context.close();
    }
}
