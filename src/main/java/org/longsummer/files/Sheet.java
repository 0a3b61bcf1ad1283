package org.longsummer.files;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A CSV file (RFC 4180) with a header, read row by row: columns in any order, separated by comma, semicolon or tab as its header shows,
 * lines ended by LF or CR LF, in UTF-8 (UTF-16 with its byte-order mark), with or without a byte-order mark.
 */
final class Sheet {
    /** Why rows cannot be told apart any more. */
    static final String UNSPLIT = "from here on cells cannot be told apart: put text with separators between two \" and write \"\" for one inside; "
            + "a row has at most 16,000 cells and a cell at most 16 million letters";
    private final String name;
    private final Layout layout;
    private final Findings findings;
    private final Map<String, Integer> columns = new HashMap<>();
    private char separator = ',';
    private int width;

    private Sheet(String name, Layout layout, Findings findings) {
        this.name = name;
        this.layout = layout;
        this.findings = findings;
    }

    /**
     * Hands over the rows in order; a file whose header cannot be used has none.
     *
     * @throws IOException when the file cannot be opened or read
     */
    static void read(Path file, Layout layout, Findings findings, Consumer<Row> rows) throws IOException {
        Sheet sheet = new Sheet(String.valueOf(file.getFileName()), layout, findings);
        Optional<String> remedy = TextCheck.remedy(file);
        if (remedy.isPresent()) {
            sheet.whole(0, remedy.get());
            return;
        }
        sheet.separator = separator(file);
        try (Reader text = open(file, CodingErrorAction.REPORT)) {
            sheet.read(text, rows);
        }
    }

    private void read(Reader text, Consumer<Row> rows) throws IOException {
        long number = 0;
        try (CsvReader<CsvRecord> reader = CsvReader.builder().fieldSeparator(separator).skipEmptyLines(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE).allowUnclosedQuote(false).ofCsvRecord(text)) {
            Iterator<CsvRecord> records = reader.iterator();
            boolean usable = records.hasNext() ? header(records.next()) : noHeader();
            number = 1;
            while (usable && records.hasNext()) {
                number++;
                row(number, records.next(), rows);
            }
        } catch (CsvParseException e) {
            whole(number + 1, UNSPLIT);
        } catch (UncheckedIOException e) {
            unreadable(e.getCause(), number + 1);
        } catch (CharacterCodingException e) {
            unreadable(e, number + 1);
        }
    }

    private void unreadable(IOException cause, long number) throws IOException {
        if (!(cause instanceof CharacterCodingException)) {
            throw cause;
        }
        whole(number, "the text near here is not UTF-8; save the file as \"CSV UTF-8\"");
    }

    private void whole(long number, String remedy) {
        findings.add(new Problem(name, number, "", "", remedy));
    }

    private boolean noHeader() {
        whole(0, "there is no header; the first line must name the columns " + String.join(",", layout.known()));
        return false;
    }

    private boolean header(CsvRecord record) {
        width = record.getFieldCount();
        if (width == 1 && record.getField(0).isBlank()) {
            return noHeader();
        }
        boolean usable = true;
        for (int i = 0; i < width; i++) {
            usable &= column(record.getField(i).strip().toLowerCase(Locale.ROOT), i);
        }
        for (List<String> oneOf : layout.required()) {
            if (oneOf.stream().noneMatch(columns::containsKey)) {
                usable = false;
                findings.add(new Problem(name, 1, oneOf.get(0), "", "this column is missing; add it"
                        + (oneOf.size() > 1 ? " (or " + String.join(" or ", oneOf.subList(1, oneOf.size())) + ")" : "")
                        + "; its cells may stay empty only where a reading was not taken"));
            }
        }
        return usable;
    }

    private boolean column(String column, int index) {
        if (!layout.known().contains(column)) {
            if (!column.isEmpty()) {
                findings.remark(name + ": the column \"" + column + "\" is not known and was ignored");
            }
            return true;
        }
        if (columns.put(column, index) != null) {
            findings.add(new Problem(name, 1, column, "", "two columns have this name; keep one"));
            return false;
        }
        return true;
    }

    private void row(long number, CsvRecord record, Consumer<Row> rows) {
        int fields = record.getFieldCount();
        if (fields == 1 && record.getField(0).isBlank()) {
            return;
        }
        if (fields != width) {
            whole(number, "it has " + fields + " cells and the header has " + width
                    + "; check for a missing or extra separator, and put text with separators between \"");
            return;
        }
        rows.accept(new Row(name, number, column -> {
            Integer index = columns.get(column);
            return index == null ? null : record.getField(index);
        }, separator != ',', findings));
    }

    private static char separator(Path file) throws IOException {
        char[] start = new char[8192];
        int length = 0;
        try (Reader text = open(file, CodingErrorAction.REPLACE)) {
            for (int read = 0; read >= 0 && length < start.length; read = text.read(start, length, start.length - length)) {
                length += read;
            }
        }
        String header = new String(start, 0, length).lines().findFirst().orElse("");
        char best = ',';
        for (char candidate : new char[] {';', '\t'}) {
            best = count(header, candidate) > count(header, best) ? candidate : best;
        }
        return best;
    }

    private static long count(String text, char wanted) {
        return text.chars().filter(c -> c == wanted).count();
    }

    private static Reader open(Path file, CodingErrorAction onError) throws IOException {
        InputStream bytes = new BufferedInputStream(Files.newInputStream(file), 1 << 16);
        try {
            bytes.mark(4);
            byte[] first = bytes.readNBytes(3);
            bytes.reset();
            boolean utf8Mark = first.length == 3 && (first[0] & 0xFF) == 0xEF && (first[1] & 0xFF) == 0xBB && (first[2] & 0xFF) == 0xBF;
            boolean utf16Mark = first.length >= 2 && ((first[0] & 0xFF) == 0xFE && (first[1] & 0xFF) == 0xFF
                    || (first[0] & 0xFF) == 0xFF && (first[1] & 0xFF) == 0xFE);
            bytes.skipNBytes(utf8Mark ? 3 : 0);
            Charset charset = utf16Mark ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
            return new InputStreamReader(bytes, charset.newDecoder().onMalformedInput(onError).onUnmappableCharacter(onError));
        } catch (IOException e) {
            bytes.close();
            throw e;
        }
    }
}
