package org.longsummer.performance;

import io.javalin.Javalin;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * From the command to the first answer, against a bare server of the same libraries, without and with an archive of loaded classes;
 * by turns in one run.
 *
 * <p>Arguments: {@code [ROUNDS]}. Start it with {@code java -cp target/longsummer.jar:target/test-classes org.longsummer.performance.Start}.
 */
public final class Start {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final int PORT = 18_115;

    private Start() {}

    /** The bare server. */
    public static final class Bare {
        private Bare() {}

        public static void main(String[] arguments) {
            Javalin.create(config -> {
                config.startup.showJavalinBanner = false;
                config.routes.get("/health", request -> request.json(java.util.Map.of("status", "ok")));
            }).start("127.0.0.1", PORT);
        }
    }

    public static void main(String[] arguments) throws Exception {
        int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 7;
        Path directory = Files.createTempDirectory("longsummer-performance");
        String archive = directory.resolve("classes.jsa").toString();
        String bareArchive = directory.resolve("bare.jsa").toString();
        List<String> ours = List.of("org.longsummer.Longsummer", "serve", "--port", Integer.toString(PORT), "--data", directory.resolve("record").toString());
        List<String> theirs = List.of(Bare.class.getName());
        seconds("-XX:ArchiveClassesAtExit=" + archive, ours);
        seconds("-XX:ArchiveClassesAtExit=" + bareArchive, theirs);
        double[][] times = new double[4][rounds];
        for (int round = 0; round < rounds; round++) {
            times[0][round] = seconds("-Xshare:auto", theirs);
            times[1][round] = seconds("-Xshare:auto", ours);
            times[2][round] = seconds("-XX:SharedArchiveFile=" + bareArchive, theirs);
            times[3][round] = seconds("-XX:SharedArchiveFile=" + archive, ours);
        }
        for (double[] each : times) {
            Arrays.sort(each);
        }
        int middle = rounds / 2;
        System.out.printf(Locale.ROOT, "start to first answer, medians of %d: bare %.2f s, ours %.2f s, %.1f times; with archives of classes %.2f s, %.2f s, "
                + "%.1f times; ours with one against bare without %.1f times%n", rounds, times[0][middle], times[1][middle], times[1][middle] / times[0][middle],
                times[2][middle], times[3][middle], times[3][middle] / times[2][middle], times[3][middle] / times[0][middle]);
    }

    private static double seconds(String option, List<String> program) throws Exception {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), option, "-cp",
                System.getProperty("java.class.path")));
        command.addAll(program);
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        while (!answers()) {
            if (!process.isAlive()) {
                throw new IllegalStateException("ended with " + process.exitValue() + ": " + command);
            }
            Thread.sleep(5);
        }
        double taken = (System.nanoTime() - start) / 1e9;
        process.destroy();
        process.waitFor();
        return taken;
    }

    private static boolean answers() throws InterruptedException {
        try {
            return CLIENT.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + PORT + "/health")).build(),
                    HttpResponse.BodyHandlers.discarding()).statusCode() == 200;
        } catch (IOException e) {
            return false;
        }
    }
}
