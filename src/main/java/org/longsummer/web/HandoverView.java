package org.longsummer.web;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.longsummer.files.FileKind;
import org.longsummer.files.Outcome;
import org.longsummer.files.Question;
import org.longsummer.files.Understood;
import org.longsummer.wire.Problem;

/** Files that were handed over, as the page shows them. */
record HandoverView(String handover, String state, Progress progress, List<FileView> files, Map<String, Integer> counts, List<RowView> rows,
        List<String> remarks, Optional<ImportApi.Imported> taken, List<Problem> problems) {

    /** How many of what are done. */
    record Progress(String what, long done) {
        static final Progress NONE = new Progress("", 0);
    }

    /** One file; what its columns may be is told with what it holds. */
    record FileView(String name, Optional<String> kind, long rows, boolean isRemembered, List<Understood.Column> columns, List<String> meanings,
            Map<String, String> answers, List<Question> questions) {}

    /** What would become of one row. */
    record RowView(String file, long row, String what, String becomes, List<Outcome.Change> changes, List<Problem> problems) {}

    static HandoverView of(String id, HandoverWork.State state, Progress progress, boolean isStopping, List<Understood> understood, Tried tried,
            Optional<ImportApi.Imported> taken, List<Problem> problems) {
        return new HandoverView(id, isStopping ? "stopping" : state.name().toLowerCase(Locale.ROOT), progress,
                understood.stream().map(HandoverView::file).toList(), tried.counts(), tried.rows().stream().map(HandoverView::row).toList(),
                List.copyOf(tried.remarks()), taken, problems);
    }

    private static FileView file(Understood file) {
        return new FileView(file.name(), file.kind().map(FileKind::word), file.rows(), file.isRemembered(), file.columns(),
                file.kind().map(FileKind::columns).orElse(List.of()), file.answers().said(), file.questions());
    }

    static RowView row(Outcome outcome) {
        return new RowView(outcome.file(), outcome.row(), outcome.what(), outcome.becomes().word(), outcome.changes(),
                outcome.problems().stream().map(problem -> new Problem(problem.column(), problem.given(), "", ImportApi.sentence(problem.remedy()))).toList());
    }
}
