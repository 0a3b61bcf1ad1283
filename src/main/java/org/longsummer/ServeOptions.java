package org.longsummer;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.CountDownLatch;
import org.longsummer.demo.DemoFleet;
import org.longsummer.store.Store;
import org.longsummer.web.WebServer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What serving the pages takes, with or without the word {@code serve}. */
final class ServeOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--port", paramLabel = "N", defaultValue = "${env:LONGSUMMER_PORT:-8115}",
            description = "port to listen on, 0 for any free one; default ${DEFAULT-VALUE}")
    private int port;

    @Option(names = "--host", paramLabel = "NAME", defaultValue = "${env:LONGSUMMER_HOST:-127.0.0.1}",
            description = "address to listen on; default ${DEFAULT-VALUE}, this machine alone")
    private String host;

    @Option(names = "--data", paramLabel = "DIR", defaultValue = "${env:LONGSUMMER_DATA:-longsummer-data}",
            description = "directory of the record, made when it is not there; default ${DEFAULT-VALUE}")
    private Path data;

    @Option(names = "--demo", description = "fill an empty record with an invented fleet")
    private boolean demo;

    /** Serves until the process is told to end. */
    int run() throws InterruptedException {
        if (port < 0 || port > 65_535) {
            throw new ParameterException(spec.commandLine(), "--port " + port + " is given; write a number from 0 to 65535.");
        }
        try (Store store = Store.open(data)) {
            if (demo) {
                loadDemo(store);
            }
            try (WebServer server = new WebServer(store, Clock.systemUTC(), DemoFleet::load).start(host, port)) {
                spec.commandLine().getOut().println("Longsummer is ready at http://" + shownHost() + ":" + server.port() + "/");
                untilTold();
            }
        }
        return 0;
    }

    private void loadDemo(Store store) {
        if (DemoFleet.load(store) || store.demo().isThere()) {
            return;
        }
        throw new ParameterException(spec.commandLine(), "--demo is given, but " + data
                + " holds a fleet of your own; name another directory with --data.");
    }

    private String shownHost() {
        return host.contains(":") ? "[" + host + "]" : host;
    }

    /** A termination signal runs the hook, which waits until the store is closed. */
    private static void untilTold() throws InterruptedException {
        CountDownLatch told = new CountDownLatch(1);
        Thread serving = Thread.currentThread();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            told.countDown();
            try {
                serving.join(10_000);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }));
        told.await();
    }
}
