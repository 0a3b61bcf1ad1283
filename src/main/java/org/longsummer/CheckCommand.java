package org.longsummer;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import org.longsummer.store.RecordCheck;
import org.longsummer.store.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Looks the record over. */
@Command(name = "check", mixinStandardHelpOptions = true,
        description = "Look the record over, while people work: its file, its references, orphans; judge every visit again and compare.")
final class CheckCommand implements Callable<Integer> {
    private static final int UNITS_LISTED = 20;

    @Spec
    private CommandSpec spec;

    @Option(names = "--data", paramLabel = "DIR", defaultValue = "${env:LONGSUMMER_DATA:-longsummer-data}",
            description = "directory of the record; default ${DEFAULT-VALUE}")
    private Path data;

    @Option(names = "--judge-again", description = "write the verdicts anew of units that this version judges otherwise, as after an upgrade")
    private boolean judgeAgain;

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        PrintedProgress progress = new PrintedProgress(spec.commandLine().getErr());
        RecordCheck.Report report = RecordCheck.run(data, Clock.systemUTC(), unit -> progress.step("units judged again"));
        report.faults().forEach(fault -> out.println("Fault: " + fault + "."));
        if (!report.differingUnits().isEmpty()) {
            sayDiffering(report, out);
        }
        if (!report.faults().isEmpty() || !report.differingUnits().isEmpty() && !judgeAgain) {
            return Longsummer.FAILED;
        }
        out.println("The record is whole: " + report.units() + " units, " + report.visits() + " visits"
                + (report.differingUnits().isEmpty() ? ", every verdict as this version judges it." : "."));
        return 0;
    }

    private void sayDiffering(RecordCheck.Report report, PrintWriter out) {
        int units = report.differingUnits().size();
        out.println(units + (units == 1 ? " unit is" : " units are") + " judged otherwise by this version than what is stored says: "
                + String.join(", ", report.differingUnits().subList(0, Math.min(units, UNITS_LISTED))) + (units > UNITS_LISTED ? " ..." : "."));
        if (!judgeAgain) {
            out.println("After an upgrade this is to be expected; --judge-again writes their verdicts anew. Visits are never changed by it.");
            return;
        }
        try (Store store = Store.open(data)) {
            report.differingUnits().forEach(store.judging()::judgeAgain);
        }
        out.println("Their verdicts are written anew.");
    }
}
