package org.longsummer;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.longsummer.demo.DemoFleet;
import org.longsummer.demo.LargeFleet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes invented fleets as CSV files. */
@Command(name = "demo-data", mixinStandardHelpOptions = true, description = "Write an invented fleet as units.csv and visits.csv.")
final class DemoDataCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "directory for the two files, made when it is not there")
    private Path out;

    @Option(names = "--units", paramLabel = "N", description = "instead of the demo fleet, a large one of so many units")
    private Integer units;

    @Option(names = "--visits", paramLabel = "M", defaultValue = "10", description = "with --units: visits a unit; default ${DEFAULT-VALUE}")
    private int visits;

    @Override
    public Integer call() throws IOException {
        if (units != null && (units < 1 || visits < 0)) {
            throw new ParameterException(spec.commandLine(), "--units takes a number from 1 on, --visits one from 0 on.");
        }
        if (units == null) {
            DemoFleet.write(out);
        } else {
            LargeFleet.write(out, units, visits);
        }
        return 0;
    }
}
