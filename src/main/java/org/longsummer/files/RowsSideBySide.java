package org.longsummer.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.longsummer.store.Workers;

/** Reads the rows of a large file on all processors and takes them, and what is wrong with them, in the order of the file. */
final class RowsSideBySide<T> implements AutoCloseable {
    private static final int ROWS_AT_ONCE = 250;

    private final Findings findings;
    private final Function<Row, T> reading;
    private final BiConsumer<Row, T> taker;
    private final Workers workers = new Workers(Runtime.getRuntime().availableProcessors());
    private final Workers.Line<List<Read<T>>, RuntimeException> underway = workers.line(this::take);
    /** What the sheet finds comes after what is wrong with the rows before. */
    private final Findings ofSheet = new Findings(this::note);
    private List<Row> waiting = new ArrayList<>();
    private boolean taking;

    private record Read<T>(Row row, T content) {}

    private RowsSideBySide(Findings findings, Function<Row, T> reading, BiConsumer<Row, T> taker) {
        this.findings = findings;
        this.reading = reading;
        this.taker = taker;
    }

    /**
     * Reads a file.
     *
     * @param reading what a row says; on any thread
     * @param taker takes it, on this thread
     * @throws IOException when the file cannot be read
     */
    static <T> void read(Path file, Layout layout, Findings findings, Function<Row, T> reading, BiConsumer<Row, T> taker) throws IOException {
        try (RowsSideBySide<T> rows = new RowsSideBySide<>(findings, reading, taker)) {
            Sheet.read(file, layout, rows.ofSheet, rows::row);
            rows.takeAll();
            rows.ofSheet.remarks().forEach(findings::remark);
        }
    }

    private void note(Problem problem) {
        if (!taking) {
            takeAll();
        }
        findings.add(problem);
    }

    private void row(Row row) {
        row.holdProblems();
        waiting.add(row);
        if (waiting.size() == ROWS_AT_ONCE) {
            List<Row> some = waiting;
            waiting = new ArrayList<>(ROWS_AT_ONCE);
            underway.add(() -> read(some));
        }
    }

    private List<Read<T>> read(List<Row> some) {
        return some.stream().map(row -> new Read<>(row, reading.apply(row))).toList();
    }

    private void takeAll() {
        underway.takeAll();
        List<Row> rest = waiting;
        waiting = new ArrayList<>();
        take(read(rest));
    }

    private void take(List<Read<T>> some) {
        taking = true;
        for (Read<T> read : some) {
            List<Problem> held = read.row().heldProblems();
            taker.accept(read.row(), read.content());
            held.forEach(findings::add);
        }
        taking = false;
    }

    @Override
    public void close() {
        workers.close();
    }
}
