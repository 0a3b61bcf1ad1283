package org.longsummer.web;

import com.microsoft.playwright.Page.ScreenshotOptions;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.longsummer.demo.DemoFleet;
import org.longsummer.evidence.Project;

/** Takes the picture in the README, the demo fleet's yard on a laptop: {@code mvn -B test -Dtest=ReadmePicture}. No part of the build's tests. */
class ReadmePicture {
    private static final Clock LATE_SUMMER = Clock.fixed(Instant.parse("2026-10-01T15:00:00Z"), ZoneOffset.UTC);
    private static final Path PICTURE = Project.REFERENCE.resolve("pictures").resolve("yard.png");

    @Test
    void take() {
        try (RunningServer server = new RunningServer(LATE_SUMMER)) {
            DemoFleet.load(server.store);
            try (Visitor visitor = new Visitor(server, 1280, ColorScheme.LIGHT, "en-US")) {
                visitor.go("yard/");
                visitor.page.screenshot(new ScreenshotOptions().setPath(PICTURE));
            }
        }
    }
}
