package org.longsummer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.longsummer.access.Reach;
import org.longsummer.files.Answers;
import org.longsummer.files.Handover;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import org.longsummer.files.Outcome;
import org.longsummer.files.Question;
import org.longsummer.files.Stoppable;
import org.longsummer.files.TemporaryDirectory;
import org.longsummer.files.Understood;
import org.longsummer.files.WholeRecord;
import org.longsummer.store.Intake;
import org.longsummer.store.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes CSV files into the record. */
@Command(name = "import", mixinStandardHelpOptions = true,
        description = "Take units, visits, depots, prices and planned work from CSV files into the record, wholly or not at all. Again changes nothing.")
final class ImportCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "0..*", description = "files in any form; what each holds is known by its columns, or asked")
    private List<Path> files = List.of();

    @Option(names = "--units", paramLabel = "FILE", description = "a file with units; may be left out when the record has them")
    private Path units;

    @Option(names = "--visits", paramLabel = "FILE", description = "a file with visits; may be left out")
    private Path visits;

    @Option(names = "--record", paramLabel = "DIR", description = "directory that export --all wrote, instead of the files")
    private Path record;

    @Option(names = "--try", description = "say row by row what would happen, and change nothing")
    private boolean tryOut;

    @Option(names = "--answer", paramLabel = "KEY=VALUE", description = "what a file leaves open, such as dates=day_first; the command asks first")
    private Map<String, String> answers = new LinkedHashMap<>();

    @Option(names = "--column", paramLabel = "NAME=MEANING", description = "what a column of the fleet's own is, such as \"Amp draw=amps\"; remembered")
    private Map<String, String> columns = new LinkedHashMap<>();

    @Option(names = "--data", paramLabel = "DIR", defaultValue = "${env:LONGSUMMER_DATA:-longsummer-data}",
            description = "directory of the record, made when it is not there; default ${DEFAULT-VALUE}")
    private Path data;

    @Override
    public Integer call() throws IOException, FileRefused {
        check();
        Findings findings = new Findings();
        try (Interruption interruption = new Interruption(new PrintedProgress(spec.commandLine().getErr())); Store store = Store.open(data)) {
            Stoppable progress = interruption.progress();
            store.acting().begin(PeopleCommand.COMMAND_LINE);
            if (store.demo().isThere()) {
                throw new ParameterException(spec.commandLine(), data + " holds the demo fleet; remove the demo on its pages first, "
                        + "or name another directory with --data.");
            }
            return record != null ? say(WholeRecord.read(store, record, findings, progress)) : handOver(store, findings, progress);
        } finally {
            findings.remarks().forEach(spec.commandLine().getErr()::println);
        }
    }

    private void check() {
        if (given().isEmpty() && record == null) {
            throw new ParameterException(spec.commandLine(), "nothing to import: name files, or --record.");
        }
        if (record != null && (!given().isEmpty() || tryOut || !Files.isDirectory(record))) {
            throw new ParameterException(spec.commandLine(), "--record takes a directory, and no other file beside it.");
        }
        InputFiles.check(spec.commandLine(), "--units", units);
        InputFiles.check(spec.commandLine(), "--visits", visits);
        files.forEach(file -> InputFiles.check(spec.commandLine(), "FILE", file));
    }

    private List<Path> given() {
        List<Path> given = new ArrayList<>(files);
        Optional.ofNullable(units).ifPresent(given::add);
        Optional.ofNullable(visits).ifPresent(given::add);
        return given;
    }

    private Integer handOver(Store store, Findings findings, Stoppable progress) throws IOException, FileRefused {
        try (TemporaryDirectory workplace = new TemporaryDirectory("longsummer-import")) {
            Handover handover = new Handover(store, Reach.EVERYWHERE, "", given(), workplace.path());
            List<Understood> understood = handover.understand(answers(), progress);
            if (!handover.isUnderstood()) {
                understood.forEach(this::ask);
                spec.commandLine().getErr().println("Nothing was changed. Answer with --answer KEY=VALUE, and say again what to import.");
                return Longsummer.REFUSED;
            }
            return tryOut ? tryOut(handover, progress) : say(handover.take(findings, progress));
        }
    }

    private List<Answers> answers() {
        Map<String, String> said = new LinkedHashMap<>(answers);
        columns.forEach((name, meaning) -> said.put(Question.COLUMN + name.strip(), meaning));
        List<Answers> each = new ArrayList<>(Collections.nCopies(files.size(), new Answers(said, Optional.empty())));
        Optional.ofNullable(units).ifPresent(file -> each.add(new Answers(said, Optional.empty()).or(kind("units"))));
        Optional.ofNullable(visits).ifPresent(file -> each.add(new Answers(said, Optional.empty()).or(kind("visits"))));
        return each;
    }

    private static Answers kind(String kind) {
        return new Answers(Map.of(Question.KIND, kind), Optional.empty());
    }

    private void ask(Understood file) {
        for (Question question : file.questions()) {
            spec.commandLine().getErr().println(file.name() + ": " + question.text());
            if (question.key().equals(Question.COLUMNS)) {
                file.columns().forEach(column -> spec.commandLine().getErr().println("  --column \"" + column.name() + "="
                        + (column.meaning().isEmpty() ? "" : column.meaning()) + "\"" + (column.example().isEmpty() ? "" : "  for example " + column.example())));
                spec.commandLine().getErr().println("  --answer columns=proposed  takes them as they stand here; any of "
                        + file.kind().map(kind -> String.join(", ", kind.columns())).orElse(""));
            }
        }
    }

    private Integer tryOut(Handover handover, Stoppable progress) throws IOException {
        Map<Outcome.Becomes, Integer> counts = new EnumMap<>(Outcome.Becomes.class);
        List<String> remarks = handover.tryOut(progress, outcome -> {
            counts.merge(outcome.becomes(), 1, Integer::sum);
            spec.commandLine().getOut().println(outcome.text());
        });
        remarks.forEach(spec.commandLine().getErr()::println);
        List<String> words = new ArrayList<>();
        for (Outcome.Becomes becomes : Outcome.Becomes.values()) {
            words.add(counts.getOrDefault(becomes, 0) + " " + becomes.word());
        }
        spec.commandLine().getOut().println("It would be: " + String.join(", ", words) + ". Nothing was changed.");
        return counts.containsKey(Outcome.Becomes.REFUSED) ? Longsummer.REFUSED : 0;
    }

    private Integer say(Intake.Report report) {
        spec.commandLine().getOut().println(report.unitsAdded() + " units added, " + report.unitsChanged() + " changed; "
                + report.visitsStored() + " visits stored, " + report.visitsAlreadyStored() + " were there already.");
        return 0;
    }
}
