package org.longsummer.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import org.longsummer.files.Progress;
import org.longsummer.files.RecordZip;
import org.longsummer.files.TemporaryDirectory;
import org.longsummer.files.WholeRecord;
import org.longsummer.store.Intake;
import org.longsummer.store.Store;
import org.longsummer.wire.Problem;

/** The whole record as one zip file of CSV files and photos, out and in again. */
final class RecordApi {
    private final Store store;

    RecordApi(Store store) {
        this.store = store;
    }

    void give(Context request) throws IOException {
        try (TemporaryDirectory place = new TemporaryDirectory("longsummer-export")) {
            Path directory = place.path();
            WholeRecord.write(store, Asking.of(request).reach(), directory, Progress.SILENT);
            String day = BecauseForm.today(store, "").toString();
            request.contentType("application/zip").header("Content-Disposition", "attachment; filename=\"longsummer-" + day + ".zip\"");
            RecordZip.pack(directory, request.outputStream());
        }
    }

    void take(Context request) throws IOException {
        UploadedFile file = request.uploadedFile("record");
        if (file == null || file.size() == 0) {
            throw new Refused(422, List.of(new Problem("record", "", "A file is needed.", "Choose the zip file that was exported.")));
        }
        Findings findings = new Findings();
        try (TemporaryDirectory place = new TemporaryDirectory("longsummer-import"); InputStream content = file.content()) {
            Path directory = place.path();
            RecordZip.unpack(content, directory);
            Intake.Report report = WholeRecord.read(store, directory, findings, Progress.SILENT);
            request.json(new ImportApi.Imported(report.unitsAdded(), report.unitsChanged(), report.visitsStored(), report.visitsAlreadyStored(),
                    findings.remarks()));
        } catch (FileRefused refused) {
            throw new Refused(422, ImportApi.problems(refused));
        }
    }
}
