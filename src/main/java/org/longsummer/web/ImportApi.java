package org.longsummer.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.longsummer.access.Reach;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import org.longsummer.files.Import;
import org.longsummer.files.Progress;
import org.longsummer.store.Intake;
import org.longsummer.store.Store;
import org.longsummer.wire.Problem;

/** Takes a fleet's CSV files in, wholly or not at all. */
final class ImportApi {
    private static final int LONGEST_FILE_NAME = 80;

    private final Store store;

    ImportApi(Store store) {
        this.store = store;
    }

    /** What became of the files; remarks hindered nothing. */
    record Imported(int unitsAdded, int unitsChanged, int visitsStored, int visitsAlreadyStored, List<String> remarks) {}

    void take(Context request) throws IOException {
        Path directory = Files.createTempDirectory("longsummer-import");
        try {
            Optional<Path> units = saved(request.uploadedFile("units"), directory, "units.csv");
            Optional<Path> visits = saved(request.uploadedFile("visits"), directory, "visits.csv");
            if (units.isEmpty() && visits.isEmpty()) {
                throw new Refused(422, List.of(new Problem("units", "", "At least one file is needed.", "Choose units.csv, visits.csv or both.")));
            }
            Asking asking = Asking.of(request);
            request.json(run(units, visits, asking.reach(), asking.name()));
        } finally {
            delete(directory);
        }
    }

    private Imported run(Optional<Path> units, Optional<Path> visits, Reach reach, String savedBy) throws IOException {
        Findings findings = new Findings();
        try {
            Intake.Report report = Import.run(store, reach, units, visits, savedBy, findings, Progress.SILENT);
            return new Imported(report.unitsAdded(), report.unitsChanged(), report.visitsStored(), report.visitsAlreadyStored(),
                    findings.remarks());
        } catch (FileRefused refused) {
            throw new Refused(422, Stream.concat(refused.problems().stream().map(ImportApi::problem), more(refused)).toList());
        }
    }

    private static Problem problem(org.longsummer.files.Problem problem) {
        String place = problem.file() + (problem.row() > 0 ? ", row " + problem.row() : "")
                + (problem.column().isEmpty() ? "" : ", " + problem.column());
        String remedy = problem.remedy();
        return new Problem(place, problem.given(), "", remedy.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + remedy.substring(1) + ".");
    }

    private static Stream<Problem> more(FileRefused refused) {
        long more = refused.count() - refused.problems().size();
        return more == 0 ? Stream.empty() : Stream.of(new Problem("", "", "And " + more + " more.", "Put these right first."));
    }

    /** Keeps the file's own name, so that problems name it as the person knows it. */
    private static Optional<Path> saved(UploadedFile file, Path directory, String usualName) throws IOException {
        if (file == null || file.size() == 0) {
            return Optional.empty();
        }
        String name = file.filename().replaceAll("[^\\p{L}\\p{N}._ -]", "_");
        Path place = Files.createDirectory(directory.resolve(usualName + ".d"))
                .resolve(name.isBlank() || name.startsWith(".") || name.length() > LONGEST_FILE_NAME ? usualName : name);
        try (InputStream content = file.content()) {
            Files.copy(content, place);
        }
        return Optional.of(place);
    }

    private static void delete(Path directory) throws IOException {
        try (Stream<Path> all = Files.walk(directory)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
