package org.longsummer.files;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.longsummer.chain.due.NextCheck;
import org.longsummer.quantity.Decimal;
import org.longsummer.store.Advised;
import org.longsummer.store.Standing;

/** A {@code yard.csv}: how units stand, one a row, in the order in which they are handed over. For people and their spreadsheets; it is not read again. */
public final class YardFile implements Closeable {
    private static final List<String> COLUMNS = List.of("unit_id", "label", "site", "vehicle", "position", "duty", "state", "retake", "condition",
            "p_condition", "p_impact", "since", "last_visit_at", "visits", "next_check_on", "next_check_reason", "filter_due_on", "warranty_until",
            "work_planned_for", "limit_on", "advice", "advice_timing", "waiting_30_days_cost", "currency");
    private static final int DECIMALS = 4;

    private final CsvWriter csv;

    /** Writes the header; the stream is closed with this. */
    public YardFile(OutputStream file) {
        csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).bufferSize(1 << 16).build(file, StandardCharsets.UTF_8);
        csv.writeRecord(COLUMNS);
    }

    /** Writes one row; a cell that a spreadsheet would run is escaped. */
    public void write(Standing unit) {
        Optional<Standing.Judged> judged = unit.judged();
        csv.writeRecord(Cell.escaped(unit.unitId()), Cell.escaped(unit.label()), Cell.escaped(unit.depot()), Cell.escaped(unit.vehicle()),
                Cell.escaped(unit.roofPosition()), unit.duty().name().toLowerCase(Locale.ROOT), judged.map(last -> last.state().word()).orElse(""),
                unit.lastToRetake() ? "yes" : "no", judged.map(last -> last.condition().word()).orElse(""),
                judged.map(last -> number(last.probabilityOfLikeliestFault())).orElse(""), judged.map(last -> number(last.probabilityOfImpact())).orElse(""),
                text(judged.flatMap(Standing.Judged::since)), text(unit.lastVisitAt()), String.valueOf(unit.visitCount()),
                text(unit.next().map(NextCheck::on)), unit.next().map(next -> next.reason().name().toLowerCase(Locale.ROOT)).orElse(""),
                text(unit.days().filterDue()), text(unit.days().warrantyEnds()), text(unit.days().plannedFor()), text(unit.advised().flatMap(Advised::limitOn)),
                advised(unit, advised -> advised.option().name().toLowerCase(Locale.ROOT)), advised(unit, advised -> advised.timing().name().toLowerCase(Locale.ROOT)),
                advised(unit, advised -> advised.waitingCosts().number()), advised(unit, advised -> advised.waitingCosts().currency()));
    }

    private static String advised(Standing unit, Function<Advised, String> cell) {
        return unit.advised().map(cell).orElse("");
    }

    private static String number(double share) {
        return Decimal.text(share, DECIMALS);
    }

    private static String text(Optional<?> value) {
        return value.map(Object::toString).orElse("");
    }

    @Override
    public void close() throws IOException {
        csv.close();
    }
}
