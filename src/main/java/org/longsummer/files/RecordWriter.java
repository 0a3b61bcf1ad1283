package org.longsummer.files;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Writes one CSV file of a record. */
final class RecordWriter implements Closeable {
    private final CsvWriter csv;

    RecordWriter(Path file, List<String> columns) throws IOException {
        csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).bufferSize(1 << 16).build(file, StandardCharsets.UTF_8);
        csv.writeRecord(columns);
    }

    void row(List<String> cells) {
        csv.writeRecord(cells);
    }

    @Override
    public void close() throws IOException {
        csv.close();
    }
}
