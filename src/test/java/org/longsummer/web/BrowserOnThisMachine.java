package org.longsummer.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.PlaywrightException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Finds or provides a Chromium for the browser tests, and says what it does: an installed one, else Playwright's own download, else
 * Debian's package. It never lets the tests be skipped: where none can be had, it fails and says what to install.
 */
public final class BrowserOnThisMachine {
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome");
    private static final List<String> PLACES = List.of("/usr/bin", "/usr/local/bin", "/snap/bin", "/opt/google/chrome",
            "/Applications/Chromium.app/Contents/MacOS", "/Applications/Google Chrome.app/Contents/MacOS",
            "C:/Program Files/Google/Chrome/Application", "C:/Program Files (x86)/Google/Chrome/Application");
    private static final List<String> OTHER_NAMES = List.of("Chromium", "Google Chrome", "chrome.exe");
    private static final List<String> ARGUMENTS = List.of("--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
            "--disable-background-networking", "--disable-component-update", "--disable-sync");
    private static final int INSTALL_MINUTES = 15;

    private static Started shared;

    private BrowserOnThisMachine() {}

    /** A browser and what must be closed with it. */
    public record Started(Playwright playwright, Browser browser) implements AutoCloseable {
        @Override
        public void close() {
            playwright.close();
        }
    }

    /** One browser for all tests of this run; it is closed when they are over. */
    static synchronized Browser shared() {
        if (shared == null) {
            shared = start();
            Runtime.getRuntime().addShutdownHook(new Thread(shared::close));
        }
        return shared.browser();
    }

    /** One process of the tests at a time, so that two do not install the same. */
    public static synchronized Started start() {
        Path lock = Path.of(System.getProperty("java.io.tmpdir"), "longsummer-browser-tests.lock");
        try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE); FileLock held = channel.lock()) {
            assert held.isValid();
            return provide();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Started provide() {
        Optional<Path> installed = installed();
        if (installed.isPresent()) {
            say("uses " + installed.get());
            return launch(installed);
        }
        say("found no Chromium or Chrome; lets Playwright download its own");
        try {
            return launch(Optional.empty());
        } catch (PlaywrightException | IllegalStateException e) {
            say("that failed: " + e.getMessage().lines().findFirst().orElse(""));
        }
        installDebianPackage();
        return launch(Optional.of(installed().orElseThrow(BrowserOnThisMachine::noBrowser)));
    }

    private static Started launch(Optional<Path> executable) {
        Map<String, String> environment = executable.isPresent() ? Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1") : Map.of();
        Playwright playwright = Playwright.create(new Playwright.CreateOptions().setEnv(environment));
        try {
            LaunchOptions options = new LaunchOptions().setArgs(ARGUMENTS);
            executable.ifPresent(options::setExecutablePath);
            return new Started(playwright, playwright.chromium().launch(options));
        } catch (PlaywrightException e) {
            playwright.close();
            throw e;
        }
    }

    private static Optional<Path> installed() {
        Stream<String> path = Stream.of(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator));
        List<String> names = Stream.concat(NAMES.stream(), OTHER_NAMES.stream()).toList();
        return Stream.concat(path, PLACES.stream()).filter(place -> !place.isBlank())
                .flatMap(place -> names.stream().map(name -> Path.of(place).resolve(name)))
                .filter(Files::isRegularFile).filter(Files::isExecutable).findFirst();
    }

    private static void installDebianPackage() {
        if (!"root".equals(System.getProperty("user.name")) || !Files.isExecutable(Path.of("/usr/bin/apt-get"))) {
            throw noBrowser();
        }
        say("installs Debian's package chromium");
        run("apt-get", "update");
        run("apt-get", "install", "-y", "--no-install-recommends", "chromium", "fonts-liberation");
    }

    private static void run(String... command) {
        try {
            ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
            builder.environment().put("DEBIAN_FRONTEND", "noninteractive");
            Process process = builder.start();
            if (!process.waitFor(INSTALL_MINUTES, TimeUnit.MINUTES) || process.exitValue() != 0) {
                process.destroy();
                throw noBrowser();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw noBrowser();
        }
    }

    private static IllegalStateException noBrowser() {
        return new IllegalStateException("The browser tests need a Chromium or Chrome and none could be provided. Install one so that "
                + "`chromium` or `google-chrome` is on the PATH, then run the tests again.");
    }

    private static void say(String what) {
        System.out.println("Browser tests: " + what + ".");
    }
}
