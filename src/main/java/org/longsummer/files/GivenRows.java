package org.longsummer.files;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The rows of a file as it was given, before anybody knows what its columns are. */
final class GivenRows {
    private static final int LONGEST_HEADER = 1 << 20;
    private static final char[] SEPARATORS = {',', ';', '\t', '|'};

    private final Path file;
    private final TextForm form;
    private final char separator;
    private final boolean namesSeparator;

    /** Looks at the first line. */
    GivenRows(Path file, TextForm form) throws IOException {
        this.file = file;
        this.form = form;
        String first = firstLine();
        this.namesSeparator = first.matches("(?i)\"?sep=.\"?");
        this.separator = namesSeparator ? first.charAt(first.toLowerCase(java.util.Locale.ROOT).indexOf("sep=") + 4) : best(first);
    }

    /** Takes rows one by one; the header is the first. */
    interface Taker {
        /**
         * @param number as a spreadsheet counts
         * @return false when no more are wanted
         */
        boolean take(long number, List<String> cells);
    }

    TextForm form() {
        return form;
    }

    char separator() {
        return separator;
    }

    /** The row of the header: the second one where the first says only what separates cells. */
    int headerRow() {
        return namesSeparator ? 2 : 1;
    }

    private String firstLine() throws IOException {
        StringBuilder line = new StringBuilder();
        try (Reader text = new BufferedReader(form.open(file))) {
            for (int c = text.read(); c >= 0 && c != '\n' && c != '\r' && line.length() < LONGEST_HEADER; c = text.read()) {
                line.append((char) c);
            }
        } catch (CharacterCodingException e) {
            // said when the rows are read
        }
        return line.toString();
    }

    private static char best(String header) {
        int[] counts = new int[SEPARATORS.length];
        boolean quoted = false;
        for (int i = 0; i < header.length(); i++) {
            quoted ^= header.charAt(i) == '"';
            for (int s = 0; s < SEPARATORS.length && !quoted; s++) {
                counts[s] += header.charAt(i) == SEPARATORS[s] ? 1 : 0;
            }
        }
        int best = 0;
        for (int s = 1; s < SEPARATORS.length; s++) {
            best = counts[s] > counts[best] ? s : best;
        }
        return SEPARATORS[best];
    }

    /** @return what kept the rest from being read */
    Optional<Problem> read(Taker taker) throws IOException {
        long number = 0;
        try (Reader text = form.open(file); CsvReader<CsvRecord> reader = CsvReader.builder().fieldSeparator(separator).skipEmptyLines(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE).missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false).ofCsvRecord(text)) {
            for (CsvRecord each : reader) {
                number++;
                if (number >= headerRow() && !taker.take(number, each.getFields())) {
                    break;
                }
            }
            return Optional.empty();
        } catch (CsvParseException e) {
            return problem(number + 1, Sheet.UNSPLIT);
        } catch (UncheckedIOException e) {
            if (e.getCause() instanceof CharacterCodingException) {
                return problem(number + 1, cutOff());
            }
            throw e.getCause();
        } catch (CharacterCodingException e) {
            return problem(number + 1, cutOff());
        }
    }

    private static String cutOff() {
        return "the text near here is damaged or ends in the middle of a letter; copy or save the file again, as \"CSV UTF-8\"";
    }

    private Optional<Problem> problem(long row, String remedy) {
        return Optional.of(new Problem(String.valueOf(file.getFileName()), row, "", "", remedy));
    }
}
