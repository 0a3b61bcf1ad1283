package org.longsummer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.longsummer.store.Backup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Copies the record while people work. */
@Command(name = "backup", mixinStandardHelpOptions = true,
        description = "Copy the record into one file, while people work. The copy is read back and on disk before it gets its name.")
final class BackupCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--out", paramLabel = "FILE", required = true, description = "the copy; nothing is replaced")
    private Path out;

    @Option(names = "--data", paramLabel = "DIR", defaultValue = "${env:LONGSUMMER_DATA:-longsummer-data}",
            description = "directory of the record; default ${DEFAULT-VALUE}")
    private Path data;

    @Override
    public Integer call() throws IOException {
        Backup.take(data, out);
        spec.commandLine().getOut().println("The record of " + data + " is copied to " + out + ", " + Files.size(out) / 1024
                + " kB, and was read back whole.");
        return 0;
    }
}
