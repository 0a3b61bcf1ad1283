package org.longsummer;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.longsummer.files.Assess;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Judges the visits of a file without a record. */
@Command(name = "assess", mixinStandardHelpOptions = true,
        description = "Judge all visits of a file and write one verdict a row; nothing is kept.")
final class AssessCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--units", paramLabel = "FILE", required = true, description = "units.csv")
    private Path units;

    @Option(names = "--visits", paramLabel = "FILE", required = true, description = "visits.csv")
    private Path visits;

    @Option(names = "--prices", paramLabel = "FILE",
            description = "price list, columns key and value; adds what is worth doing and what it saves")
    private Path prices;

    @Option(names = "--out", paramLabel = "FILE", required = true, description = "verdicts.csv, replaced when it is there")
    private Path out;

    @Override
    public Integer call() throws IOException, FileRefused {
        InputFiles.check(spec.commandLine(), "--units", units);
        InputFiles.check(spec.commandLine(), "--visits", visits);
        if (prices != null) {
            InputFiles.check(spec.commandLine(), "--prices", prices);
        }
        Findings findings = new Findings();
        try {
            Assess.run(units, visits, Optional.ofNullable(prices), out, findings, new PrintedProgress(spec.commandLine().getErr()));
        } finally {
            findings.remarks().forEach(spec.commandLine().getErr()::println);
        }
        return 0;
    }
}
