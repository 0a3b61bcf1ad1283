package org.longsummer;

import java.nio.file.Path;
import org.longsummer.demo.DemoFleet;
import org.longsummer.log.LogOutput;
import org.longsummer.store.Store;
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

    @Option(names = "--demo", description = "fill an empty record with an invented fleet")
    private boolean demo;

    @Mixin
    private BackupOptions backups;

    /** Serves until the process is told to end. */
    int run() throws InterruptedException {
        if (port < 0 || port > 65_535) {
            throw new ParameterException(spec.commandLine(), "--port " + port + " is given; write a number from 0 to 65535.");
        }
        Ending ending = new Ending();
        LogOutput.serve();
        try (Store store = Store.open(data)) {
            if (demo) {
                loadDemo(store);
            }
            try (BackupSchedule copying = backups.begin(data, store.clock(), spec.commandLine());
                    WebServer server = new WebServer(store, store.clock(), DemoFleet::load, copying::troubles).start(host, port)) {
                spec.commandLine().getOut().println("Longsummer is ready at http://" + shownHost() + ":" + server.port() + "/");
                LOG.atInfo().addKeyValue("port", server.port()).log("ready");
                ending.await();
                LOG.atInfo().log("stopping");
            }
        } finally {
            LOG.atInfo().log("stopped");
            ending.isOver();
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
}
