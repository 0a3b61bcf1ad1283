package org.longsummer;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import org.longsummer.files.Import;
import org.longsummer.store.Intake;
import org.longsummer.store.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Takes CSV files into the record. */
@Command(name = "import", mixinStandardHelpOptions = true,
        description = "Take units and visits from CSV files into the record, wholly or not at all. Again changes nothing.")
final class ImportCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--units", paramLabel = "FILE", description = "units.csv; may be left out when the record has the units")
    private Path units;

    @Option(names = "--visits", paramLabel = "FILE", description = "visits.csv; may be left out")
    private Path visits;

    @Option(names = "--data", paramLabel = "DIR", defaultValue = "${env:LONGSUMMER_DATA:-longsummer-data}",
            description = "directory of the record, made when it is not there; default ${DEFAULT-VALUE}")
    private Path data;

    @Override
    public Integer call() throws IOException, FileRefused {
        if (units == null && visits == null) {
            throw new ParameterException(spec.commandLine(), "nothing to import: name a file with --units, --visits or both.");
        }
        InputFiles.check(spec.commandLine(), "--units", units);
        InputFiles.check(spec.commandLine(), "--visits", visits);
        Findings findings = new Findings();
        Intake.Report report;
        try (Store store = Store.open(data)) {
            store.acting().begin(PeopleCommand.COMMAND_LINE);
            if (store.demo().isThere()) {
                throw new ParameterException(spec.commandLine(), data + " holds the demo fleet; remove the demo on its pages first, "
                        + "or name another directory with --data.");
            }
            report = Import.run(store, Optional.ofNullable(units), Optional.ofNullable(visits), "", findings,
                    new PrintedProgress(spec.commandLine().getErr()));
        } finally {
            findings.remarks().forEach(spec.commandLine().getErr()::println);
        }
        spec.commandLine().getOut().println(report.unitsAdded() + " units added, " + report.unitsChanged() + " changed; "
                + report.visitsStored() + " visits stored, " + report.visitsAlreadyStored() + " were there already.");
        return 0;
    }
}
