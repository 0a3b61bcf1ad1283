package org.longsummer;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Serves the pages. */
@Command(name = "serve", mixinStandardHelpOptions = true, description = "Serve the pages; what happens without a command too.")
final class ServeCommand implements Callable<Integer> {
    @Mixin
    private ServeOptions options;

    @Override
    public Integer call() throws InterruptedException, IOException {
        return options.run();
    }
}
