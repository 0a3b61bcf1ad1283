package org.longsummer.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.longsummer.files.Answers;
import org.longsummer.files.FileKind;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import org.longsummer.files.Handover;
import org.longsummer.files.Progress;
import org.longsummer.files.Question;
import org.longsummer.files.TemporaryDirectory;
import org.longsummer.store.Intake;
import org.longsummer.store.Store;
import org.longsummer.wire.Problem;

/** Takes a fleet's CSV files in, wholly or not at all, in one request: for programs, which know what they send. */
final class ImportApi {
    private static final int LONGEST_FILE_NAME = 80;

    private final Store store;

    ImportApi(Store store) {
        this.store = store;
    }

    /** What became of the files; remarks hindered nothing. */
    record Imported(int unitsAdded, int unitsChanged, int visitsStored, int visitsAlreadyStored, List<String> remarks) {}

    /** What would become of them. */
    record WouldBe(Map<String, Integer> counts, List<HandoverView.RowView> rows, List<String> remarks) {}

    /** Files by what they hold, or as {@code files}; with {@code try=yes} nothing is changed; answers by the keys of the questions. */
    void take(Context request) throws IOException {
        try (TemporaryDirectory workplace = new TemporaryDirectory("longsummer-import")) {
            List<Path> files = new ArrayList<>();
            List<Answers> answers = new ArrayList<>();
            Map<String, String> said = request.formParamMap().entrySet().stream().filter(entry -> !entry.getValue().isEmpty())
                    .collect(Collectors.toMap(Map.Entry::getKey, entry -> entry.getValue().get(0)));
            for (Map.Entry<String, List<UploadedFile>> part : new LinkedHashMap<>(request.uploadedFileMap()).entrySet()) {
                for (UploadedFile file : part.getValue().stream().filter(each -> each.size() > 0).toList()) {
                    files.add(saved(file, workplace.path(), part.getKey() + ".csv"));
                    answers.add(answers(part.getKey(), said));
                }
            }
            if (files.isEmpty()) {
                throw new Refused(422, List.of(new Problem("units", "", "At least one file is needed.", "Choose units.csv, visits.csv or both.")));
            }
            Asking asking = Asking.of(request);
            Handover handover = new Handover(store, asking.reach(), asking.name(), files, workplace.path());
            handover.understand(answers, Progress.SILENT);
            Refused.ifAny(open(handover));
            request.json("yes".equals(said.get("try")) ? tried(handover) : run(handover));
        }
    }

    private static Answers answers(String part, Map<String, String> said) {
        Answers answers = new Answers(said, Optional.empty());
        return FileKind.of(part).map(kind -> answers.with(Question.KIND, kind.word())).orElse(answers);
    }

    /** What the files leave open is a problem of the request, which the next one answers. */
    private static List<Problem> open(Handover handover) {
        List<Problem> open = new ArrayList<>();
        handover.questions().forEach((file, questions) -> questions.forEach(question -> open.add(new Problem(file + ", " + question.key(), question.example(),
                question.words(), question.choices().isEmpty() ? "Say \"column NAME\" = what it is for each column, or columns = proposed."
                        : "Send " + question.choices().stream().map(choice -> question.key() + " = " + choice.value()).collect(Collectors.joining(" or ")) + "."))));
        return open;
    }

    private WouldBe tried(Handover handover) throws IOException {
        Tried tried = new Tried();
        List<String> remarks = handover.tryOut(Progress.SILENT, tried::note);
        return new WouldBe(tried.counts(), tried.rows().stream().map(HandoverView::row).toList(), remarks);
    }

    private static Imported run(Handover handover) throws IOException {
        Findings findings = new Findings();
        try {
            Intake.Report report = handover.take(findings, Progress.SILENT);
            return new Imported(report.unitsAdded(), report.unitsChanged(), report.visitsStored(), report.visitsAlreadyStored(),
                    findings.remarks());
        } catch (FileRefused refused) {
            throw new Refused(422, problems(refused));
        }
    }

    static List<Problem> problems(FileRefused refused) {
        return Stream.concat(refused.problems().stream().map(ImportApi::problem), more(refused)).toList();
    }

    private static Problem problem(org.longsummer.files.Problem problem) {
        String place = problem.file() + (problem.row() > 0 ? ", row " + problem.row() : "")
                + (problem.column().isEmpty() ? "" : ", " + problem.column());
        return new Problem(place, problem.given(), "", sentence(problem.remedy()));
    }

    static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }

    private static Stream<Problem> more(FileRefused refused) {
        long more = refused.count() - refused.problems().size();
        return more == 0 ? Stream.empty() : Stream.of(new Problem("", "", "And " + more + " more.", "Put these right first."));
    }

    /** Keeps the file's own name, so that problems name it as the person knows it. */
    static Path saved(UploadedFile file, Path directory, String usualName) throws IOException {
        String name = file.filename().replaceAll("[^\\p{L}\\p{N}._ -]", "_");
        Path place = Files.createTempDirectory(directory, "given")
                .resolve(name.isBlank() || name.startsWith(".") || name.length() > LONGEST_FILE_NAME ? usualName : name);
        try (InputStream content = file.content()) {
            Files.copy(content, place);
        }
        return place;
    }
}
