package org.longsummer.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.longsummer.access.Reach;
import org.longsummer.store.Depot;
import org.longsummer.store.FileForms;
import org.longsummer.store.Intake;
import org.longsummer.store.Store;

/**
 * Files that somebody brings, in whatever form: first it is found out how they are to be read, then it can be tried what taking them in
 * would do, and then they are taken in, wholly or not at all.
 */
public final class Handover {
    private final Store store;
    private final Reach reach;
    private final String by;
    private final List<Path> files;
    private final Path workplace;
    private final List<Understood> understood = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private long problemCount;

    /**
     * @param by who brings them; empty when nobody is signed in
     * @param files each named as problems shall name it
     * @param workplace directory for what is made of them on the way
     */
    public Handover(Store store, Reach reach, String by, List<Path> files, Path workplace) {
        this.store = store;
        this.reach = reach;
        this.by = by;
        this.files = List.copyOf(files);
        this.workplace = workplace;
    }

    /**
     * Finds out how the files are to be read.
     *
     * @param answers what is said of each of them, by its place; {@link Answers#NONE} where nothing is
     */
    public List<Understood> understand(List<Answers> answers, Progress progress) throws IOException {
        understood.clear();
        problems.clear();
        problemCount = 0;
        Map<Integer, Understood> byPlace = new HashMap<>();
        Zones zones = new Zones();
        List<Optional<FileKind>> kinds = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            kinds.add(GivenFile.kind(files.get(i), answers.get(i)));
        }
        for (FileKind kind : List.of(FileKind.DEPOTS, FileKind.UNITS)) {
            for (int i = 0; i < files.size(); i++) {
                if (!byPlace.containsKey(i) && kinds.get(i).filter(kind::equals).isPresent()) {
                    byPlace.put(i, understand(i, answers.get(i), zones, progress));
                    zones.note(byPlace.get(i));
                }
            }
        }
        for (int i = 0; i < files.size(); i++) {
            understood.add(byPlace.containsKey(i) ? byPlace.get(i) : understand(i, answers.get(i), zones, progress));
        }
        refuseTwoOfAKind();
        return List.copyOf(understood);
    }

    private Understood understand(int place, Answers answers, Zones zones, Progress progress) throws IOException {
        Findings findings = new Findings(this::note);
        return new GivenFile(files.get(place), workplace, zones::of, findings, progress).understand(answers, this::remembered);
    }

    private void note(Problem problem) {
        problemCount++;
        if (problems.size() < Findings.LISTED) {
            problems.add(problem);
        }
    }

    private Optional<Answers> remembered(List<String> header) {
        return store.fileForms().of(header).map(form -> new Answers(form.answers(), Optional.of(form.columns())));
    }

    private void refuseTwoOfAKind() {
        for (int i = 0; i < files.size(); i++) {
            Path name = files.get(i).getFileName();
            if (files.subList(0, i).stream().anyMatch(earlier -> earlier.getFileName().equals(name))) {
                note(new Problem(String.valueOf(name), 0, "", "", "two files have this name; rename one"));
            }
        }
        Map<FileKind, String> first = new HashMap<>();
        for (Understood file : understood) {
            String earlier = file.kind().map(kind -> first.putIfAbsent(kind, file.name())).orElse(null);
            if (earlier != null) {
                note(new Problem(file.name(), 0, "", "", earlier + " holds " + file.kind().orElseThrow().word() + " too; bring one after the other"));
            }
        }
    }

    /** There is nothing left to be asked. */
    public boolean isUnderstood() {
        return understood.size() == files.size() && understood.stream().allMatch(file -> file.questions().isEmpty());
    }

    /** What is open, by the names of the files. */
    public Map<String, List<Question>> questions() {
        Map<String, List<Question>> questions = new LinkedHashMap<>();
        understood.stream().filter(file -> !file.questions().isEmpty()).forEach(file -> questions.put(file.name(), file.questions()));
        return questions;
    }

    private FleetFiles ready() {
        FleetFiles ready = new FleetFiles();
        understood.forEach(file -> file.ready().ifPresent(path -> ready.put(file.kind().orElseThrow(), path)));
        return ready;
    }

    /**
     * Says what taking them in would do.
     *
     * @param outcomes told of every row, by file
     * @return remarks that hinder nothing
     */
    public List<String> tryOut(Progress progress, Consumer<Outcome> outcomes) throws IOException {
        byRow().forEach(outcomes);
        List<String> remarks = new ArrayList<>(remarks());
        remarks.addAll(new Trial(store, reach, ready(), by, progress, outcome -> outcomes.accept(inItsOwnWords(outcome))).run());
        return remarks;
    }

    private List<Outcome> byRow() {
        Map<List<Object>, List<Problem>> rows = new LinkedHashMap<>();
        problems.stream().sorted(Comparator.comparing(Problem::file).thenComparing(Problem::row))
                .forEach(problem -> rows.computeIfAbsent(List.of(problem.file(), problem.row()), row -> new ArrayList<>()).add(problem));
        return rows.values().stream().map(all -> new Outcome(all.get(0).file(), all.get(0).row(), "", Outcome.Becomes.REFUSED, List.of(), all)).toList();
    }

    private List<String> remarks() {
        return understood.stream().flatMap(file -> file.remarks().stream().map(remark -> file.name() + ": " + remark)).toList();
    }

    private Understood named(String file) {
        return understood.stream().filter(each -> each.name().equals(file)).findFirst().orElseThrow();
    }

    private Problem inItsOwnWords(Problem problem) {
        return named(problem.file()).inItsOwnWords(problem);
    }

    private Outcome inItsOwnWords(Outcome outcome) {
        return new Outcome(outcome.file(), outcome.row() + (outcome.row() == 0 ? 0 : named(outcome.file()).rowsBefore()), outcome.what(), outcome.becomes(),
                outcome.changes(), outcome.problems().stream().map(this::inItsOwnWords).toList());
    }

    /**
     * Takes them in and remembers how they were read.
     *
     * @throws FileRefused with all that is wrong; nothing was taken in
     */
    public Intake.Report take(Findings findings, Progress progress) throws IOException, FileRefused {
        remarks().forEach(findings::remark);
        Findings inTheirForm = new Findings();
        try {
            if (problemCount > 0) {
                throw new FileRefused(problems, problemCount);
            }
            Intake.Report report = Import.run(store, reach, ready(), by, inTheirForm, progress);
            understood.forEach(this::remember);
            return report;
        } catch (FileRefused refused) {
            throw problemCount > 0 ? refused : new FileRefused(refused.problems().stream().map(this::inItsOwnWords).toList(), refused.count());
        } finally {
            inTheirForm.remarks().forEach(findings::remark);
        }
    }

    private void remember(Understood file) {
        List<String> header = file.columns().stream().map(Understood.Column::name).toList();
        List<String> columns = file.columns().stream().map(Understood.Column::meaning).toList();
        Map<String, String> answers = new LinkedHashMap<>(file.answers().said());
        answers.keySet().retainAll(Question.REMEMBERED);
        boolean isOurs = file.ready().filter(files::contains).isPresent();
        if (!isOurs) {
            store.fileForms().remember(header, new FileForms.FileForm(columns, answers, by));
        }
    }

    /** In which time zone clocks are read where a unit stands, also of units and depots that are brought together with it. */
    private final class Zones {
        private static final String NO_UNIT = "\n";
        private final Map<String, ZoneId> byDepot = new HashMap<>();
        private final Map<String, String> depots = new HashMap<>();
        private final List<Path> unitsFiles = new ArrayList<>();

        Zones() {
            store.depots().all(reach).forEach(this::note);
        }

        private void note(Depot depot) {
            depot.timeZone().ifPresent(zone -> byDepot.put(depot.name(), zone));
        }

        void note(Understood file) throws IOException {
            if (file.ready().isEmpty()) {
                return;
            }
            if (file.kind().orElseThrow() == FileKind.DEPOTS) {
                DepotsFile.read(file.ready().get(), new Findings(), this::note);
            } else {
                unitsFiles.add(file.ready().get());
            }
        }

        /** Only when somebody asks: most files say of each moment how far its clock is from UTC. */
        private void readUnits() {
            try {
                for (Path file : unitsFiles) {
                    UnitsFile.readRows(file, store.units()::find, new Findings(), (unit, row) -> depots.put(unit.id(), unit.unit().site()));
                }
                unitsFiles.clear();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        /** A unit that there is not is refused anyway; nobody need be asked for its time zone. */
        Optional<ZoneId> of(String unitId) {
            readUnits();
            String depot = depots.computeIfAbsent(unitId, id -> Import.seen(store, reach, id).map(unit -> unit.unit().site()).orElse(NO_UNIT));
            return depot.equals(NO_UNIT) ? Optional.of(ZoneOffset.UTC) : Optional.ofNullable(byDepot.get(depot));
        }
    }
}
