package org.longsummer.evidence;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.nio.file.Path;
import java.util.List;

/** A table of {@code reference/tables}, read by its columns' names; that it was read is noted for {@link ValidationRegisterTest}. */
public final class ReferenceTable {
    static final Path READ = Project.EVIDENCE.resolve("tables-read");
    private final List<NamedCsvRecord> records;

    private ReferenceTable(List<NamedCsvRecord> records) {
        this.records = records;
    }

    /** @param name file name without {@code .csv} */
    public static ReferenceTable read(String name) {
        String text = Project.read(Project.TABLES.resolve(name + ".csv"));
        Project.write(READ.resolve(name), "");
        return new ReferenceTable(CsvReader.builder().commentStrategy(CommentStrategy.SKIP).skipEmptyLines(true)
                .ofNamedCsvRecord(text).stream().toList());
    }

    public List<Row> rows() {
        return records.stream().map(Row::new).toList();
    }

    /** The rows whose column has this text. */
    public List<Row> rows(String column, String text) {
        List<Row> chosen = rows().stream().filter(row -> row.text(column).equals(text)).toList();
        if (chosen.isEmpty()) {
            throw new IllegalArgumentException("no row with " + column + " = " + text);
        }
        return chosen;
    }

    /** One row. */
    public record Row(NamedCsvRecord csv) {
        public String text(String column) {
            return csv.getField(column);
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        public boolean has(String column) {
            return !text(column).isBlank();
        }
    }
}
