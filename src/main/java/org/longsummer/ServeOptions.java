package org.longsummer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.longsummer.demo.DemoFleet;
import org.longsummer.log.LogOutput;
import org.longsummer.store.Rejudging;
import org.longsummer.store.Store;
import org.longsummer.web.Front;
import org.longsummer.web.Tls;
import org.longsummer.web.WebServer;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What serving the pages takes, with or without the word {@code serve}. */
final class ServeOptions {
    private static final Logger LOG = LoggerFactory.getLogger(ServeOptions.class);

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

    @Option(names = "--tls", paramLabel = "KEYSTORE", description = "serve HTTPS only, with the certificate and key of this PKCS #12 or JKS file")
    private Path tls;

    @Option(names = "--tls-password-file", paramLabel = "FILE",
            description = "file with the keystore's password on its first line; else LONGSUMMER_TLS_PASSWORD is taken")
    private Path tlsPassword;

    @Option(names = "--base-path", paramLabel = "PATH", defaultValue = "${env:LONGSUMMER_BASE_PATH:-}",
            description = "everything lies under this path, such as /fleet, behind a reverse proxy that passes it on")
    private String basePath;

    @Option(names = "--trust-proxy", description = "a reverse proxy stands before this server: believe its X-Forwarded-For, -Proto and -Host")
    private boolean trustProxy;

    @Option(names = SettingSources.FILE_OPTION, paramLabel = "FILE", description = "file of settings, such as port = 8115; else LONGSUMMER_SETTINGS "
            + "names it. The command settings lists them all")
    private Path settings;

    @Option(names = "--demo", description = "fill an empty record with an invented fleet")
    private boolean demo;

    @Mixin
    private BackupOptions backups;

    /** Serves until the process is told to end. */
    int run() throws InterruptedException, IOException {
        if (port < 0 || port > 65_535) {
            throw new ParameterException(spec.commandLine(), "--port " + port + " is given; write a number from 0 to 65535.");
        }
        Front front = front();
        Ending ending = new Ending();
        LogOutput.serve();
        try (Store store = Store.open(data)) {
            refuseUnlessGuarded(store, front);
            if (demo) {
                loadDemo(store);
            }
            try (BackupSchedule copying = backups.begin(data, store.clock(), spec.commandLine()); Rejudging judging = store.rejudging();
                    AdviceSchedule advising = new AdviceSchedule(store).start();
                    WebServer server = new WebServer(store, store.clock(), DemoFleet::load, front,
                            () -> Stream.concat(copying.troubles().stream(), advising.troubles().stream()).toList()).start(host, port)) {
                spec.commandLine().getOut().println("Longsummer is ready at " + (tls == null ? "http" : "https") + "://" + shownHost() + ":"
                        + server.port() + front.basePath() + "/");
                LOG.atInfo().addKeyValue("port", server.port()).log("ready");
                judging.start();
                ending.await();
                LOG.atInfo().log("stopping");
            }
        } finally {
            LOG.atInfo().log("stopped");
            ending.isOver();
        }
        return 0;
    }

    private Front front() throws IOException {
        String base = basePath.replaceFirst("/+$", "");
        if (!Front.isBasePath(base)) {
            throw new ParameterException(spec.commandLine(), "--base-path " + basePath + " is given; write a path such as /fleet, of letters, digits and -._~.");
        }
        Optional<Tls> certificate = tls == null ? Optional.empty() : Optional.of(Tls.read(tls, tlsPassword()));
        return new Front(base, trustProxy, certificate, !Front.isLoopback(host) || trustProxy || !base.isEmpty());
    }

    private String tlsPassword() throws IOException {
        if (tlsPassword != null) {
            InputFiles.check(spec.commandLine(), "--tls-password-file", tlsPassword);
            return Files.readAllLines(tlsPassword).stream().findFirst().orElse("");
        }
        return Optional.ofNullable(System.getenv("LONGSUMMER_TLS_PASSWORD")).orElse("");
    }

    /** Whoever can be reached by others than this machine lets nobody in unknown. */
    private void refuseUnlessGuarded(Store store, Front front) {
        if (!front.exposed()) {
            return;
        }
        if (!store.people().areDefined()) {
            throw new ParameterException(spec.commandLine(), "Others than this machine could reach this server, and nobody has an account yet. "
                    + "Make the first one:\n  longsummer people add NAME --role administrator --data " + data);
        }
        if (tls == null && !trustProxy && !Front.isLoopback(host)) {
            spec.commandLine().getErr().println("Warning: without --tls, or a reverse proxy that speaks HTTPS, passwords and readings cross the "
                    + "network for anybody to read.");
        }
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
}
