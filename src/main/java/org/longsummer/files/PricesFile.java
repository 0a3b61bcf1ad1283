package org.longsummer.files;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.longsummer.chain.weighing.PriceKey;
import org.longsummer.chain.weighing.PriceList;

/** A price list as CSV: one row a figure, columns {@code key} and {@code value}; what it leaves out is a default of ours. */
public final class PricesFile {
    private static final String CURRENCY = "currency";
    private static final String USUAL_CURRENCY = "USD";
    private static final Layout LAYOUT = new Layout(List.of("key", "value", "meaning"), List.of(List.of("key"), List.of("value")));

    private final Findings findings;
    private final Set<String> seen = new HashSet<>();
    private PriceList prices = PriceList.defaults(USUAL_CURRENCY);

    private PricesFile(Findings findings) {
        this.findings = findings;
    }

    /**
     * Reads a price list; every problem goes to the findings.
     *
     * @throws IOException when the file cannot be read
     */
    public static PriceList read(Path file, Findings findings) throws IOException {
        PricesFile reading = new PricesFile(findings);
        Sheet.read(file, LAYOUT, findings, reading::row);
        return reading.prices;
    }

    /** Writes every figure that counts, with its meaning; those not given are our defaults. */
    public static void write(PriceList prices, OutputStream out) {
        try (CsvWriter csv = CsvWriter.builder().build(new OutputStreamWriter(out, StandardCharsets.UTF_8))) {
            csv.writeRecord("key", "value", "meaning");
            csv.writeRecord(CURRENCY, prices.currency(), "three letters");
            for (PriceKey key : PriceKey.values()) {
                csv.writeRecord(key.word(), plain(prices.number(key)), key.meaning() + (prices.isGiven(key) ? "" : " (a default of ours)"));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void row(Row row) {
        String key = row.text("key").toLowerCase(Locale.ROOT);
        if (!seen.add(key)) {
            row.problem("key", row.text("key"), "this key stands in the file twice; keep one of the rows");
        } else if (key.equals(CURRENCY)) {
            currency(row);
        } else {
            Optional<PriceKey> known = PriceKey.of(key);
            if (known.isEmpty()) {
                row.problem("key", row.text("key"), "this is no figure of a price list; write one of " + CURRENCY + ", " + Arrays.stream(PriceKey.values())
                        .map(PriceKey::word).collect(Collectors.joining(", ")));
            } else {
                figure(row, known.get());
            }
        }
    }

    private void currency(Row row) {
        try {
            prices = PriceList.defaults(row.text("value").toUpperCase(Locale.ROOT)).overriddenBy(sameFigures(row.text("value")));
        } catch (IllegalArgumentException e) {
            row.problem("value", row.text("value"), "write the three letters of a currency, such as USD");
        }
    }

    private PriceList sameFigures(String currency) {
        PriceList same = PriceList.defaults(currency.toUpperCase(Locale.ROOT));
        for (PriceKey key : PriceKey.values()) {
            same = prices.isGiven(key) ? same.with(key, prices.number(key)) : same;
        }
        return same;
    }

    private void figure(Row row, PriceKey key) {
        row.quantity("value", value -> value).ifPresent(value -> {
            if (value >= key.least() && value <= key.most()) {
                prices = prices.with(key, value);
            } else {
                row.problem("value", row.text("value"), "write a number from " + plain(key.least()) + " to " + plain(key.most()) + ": " + key.meaning());
            }
        });
    }

    private static String plain(double limit) {
        return BigDecimal.valueOf(limit).stripTrailingZeros().toPlainString();
    }
}
