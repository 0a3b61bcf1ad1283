package org.longsummer.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The pages, styles and scripts that a phone keeps to start without a signal, and the name of this build of them: a service worker
 * whose text differs by a single byte is taken up by the browser, and then fetches everything anew.
 */
final class AppShell {
    private static final String WORKER = "service-worker.js";
    private static final int NAME_LENGTH = 16;

    private final String script;

    private AppShell(Map<String, byte[]> files) {
        byte[] worker = files.remove(WORKER);
        String addresses = files.keySet().stream().map(name -> '"' + address(name) + '"').collect(Collectors.joining(", "));
        script = "const BUILD = \"" + name(files, worker) + "\";\nconst SHELL = [" + addresses + "];\n"
                + new String(worker, StandardCharsets.UTF_8);
    }

    /** Of all that is in the folder of pages. */
    static AppShell ofPages() {
        try {
            URI folder = AppShell.class.getResource("/web/" + WORKER).toURI();
            if (!folder.getScheme().equals("jar")) {
                return new AppShell(read(Path.of(folder).getParent()));
            }
            try (FileSystem jar = FileSystems.newFileSystem(folder, Map.of())) {
                return new AppShell(read(jar.getPath("/web")));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    void serviceWorker(Context request) {
        request.header("Cache-Control", "no-cache").contentType("text/javascript").result(script);
    }

    private static Map<String, byte[]> read(Path folder) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        return files;
    }

    /** A page is kept under the address of its folder. */
    private static String address(String name) {
        return name.endsWith("index.html") ? name.substring(0, name.length() - "index.html".length()) : name;
    }

    private static String name(Map<String, byte[]> files, byte[] worker) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            files.forEach((name, content) -> {
                digest.update(name.getBytes(StandardCharsets.UTF_8));
                digest.update(content);
            });
            StringBuilder text = new StringBuilder();
            for (byte part : digest.digest(worker)) {
                text.append(Character.forDigit(part >> 4 & 15, 16)).append(Character.forDigit(part & 15, 16));
            }
            return text.substring(0, NAME_LENGTH);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
