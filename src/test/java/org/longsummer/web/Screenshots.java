package org.longsummer.web;

import com.microsoft.playwright.Page;
import java.nio.file.Path;

/** Pictures of whole pages in {@code target/screenshots}, to be looked at; taken only where asked for with {@code -Dscreenshots=true}. */
final class Screenshots {
    private static final Path FOLDER = Path.of("target", "screenshots");
    private static final boolean ASKED_FOR = Boolean.getBoolean("screenshots");

    private Screenshots() {}

    static void take(Page page, String name) {
        if (ASKED_FOR) {
            page.screenshot(new Page.ScreenshotOptions().setPath(FOLDER.resolve(name + ".png")).setFullPage(true));
        }
    }
}
