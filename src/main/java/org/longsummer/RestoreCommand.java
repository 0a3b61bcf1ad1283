package org.longsummer;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.longsummer.store.Backup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Puts a copy in place as a record. */
@Command(name = "restore", mixinStandardHelpOptions = true,
        description = "Put a copy that backup made into an empty directory, as its record. What is there is never replaced.")
final class RestoreCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--in", paramLabel = "FILE", required = true, description = "the copy")
    private Path in;

    @Option(names = "--data", paramLabel = "DIR", required = true, description = "an empty directory, made when it is not there")
    private Path data;

    @Override
    public Integer call() throws IOException {
        Backup.restore(in, data);
        spec.commandLine().getOut().println(in + " is the record of " + data + " now. Start with: serve --data " + data);
        return 0;
    }
}
