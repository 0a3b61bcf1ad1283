package org.longsummer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.longsummer.access.Reach;
import org.longsummer.files.Export;
import org.longsummer.files.WholeRecord;
import org.longsummer.store.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes the record as CSV files. */
@Command(name = "export", mixinStandardHelpOptions = true,
        description = "Write the record's units and the visits that count as units.csv and visits.csv, as import takes them; or all of it.")
final class ExportCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "directory for the files, made when it is not there")
    private Path out;

    @Option(names = "--data", paramLabel = "DIR", defaultValue = "${env:LONGSUMMER_DATA:-longsummer-data}",
            description = "directory of the record; default ${DEFAULT-VALUE}")
    private Path data;

    @Option(names = "--all", description = "write the whole record: also corrected and withdrawn visits, depots, what became of units, photos, "
            + "technicians and the business; import --record takes it in again without loss")
    private boolean all;

    @Override
    public Integer call() throws IOException {
        if (!Files.exists(data.resolve(Store.FILE))) {
            throw new ParameterException(spec.commandLine(), "--data " + data + ": there is no record; check the path.");
        }
        try (Store store = Store.open(data)) {
            if (all) {
                WholeRecord.write(store, Reach.EVERYWHERE, out, new PrintedProgress(spec.commandLine().getErr()));
            } else {
                Export.run(store, out, new PrintedProgress(spec.commandLine().getErr()));
            }
        }
        return 0;
    }
}
