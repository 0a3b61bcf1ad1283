package org.longsummer.files;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ObjLongConsumer;
import java.util.stream.Collectors;
import org.longsummer.chain.weighing.PriceKey;
import org.longsummer.chain.weighing.PriceList;
import org.longsummer.quantity.Money;
import org.longsummer.store.PriceFigure;
import org.longsummer.store.PriceScope;
import org.longsummer.store.Store;

/** A {@code prices.csv}: the figures that were given for the fleet, for depots and for units, one a row. */
final class PriceRowsFile {
    static final String NAME = "prices.csv";
    static final Layout LAYOUT = new Layout(List.of("scope", "name", "key", "value", "meaning"), List.of(List.of("key"), List.of("value")));

    private final Map<String, Long> rows = new HashMap<>();

    private PriceRowsFile() {}

    static void write(Path file, List<PriceFigure> figures) throws IOException {
        try (RecordWriter writer = new RecordWriter(file, LAYOUT.known())) {
            figures.forEach(figure -> writer.row(cells(figure)));
        }
    }

    /** The cells of a figure, in the order of the layout. */
    static List<String> cells(PriceFigure figure) {
        return List.of(Row.word(figure.scope().kind()), Cell.escaped(figure.scope().name()), figure.key(), figure.amount(),
                PriceKey.of(figure.key()).map(PriceKey::meaning).orElse("three letters of the currency"));
    }

    static void read(Path file, Findings findings, ObjLongConsumer<PriceFigure> figures) throws IOException {
        PriceRowsFile reading = new PriceRowsFile();
        Sheet.read(file, LAYOUT, findings, row -> reading.figure(row).ifPresent(figure -> figures.accept(figure, row.number())));
    }

    private Optional<PriceFigure> figure(Row row) {
        PriceScope scope = scope(row);
        String key = row.text("key").toLowerCase(Locale.ROOT).replaceAll("[ -]+", "_");
        Long earlier = rows.putIfAbsent(scope + "/" + key, row.number());
        if (earlier != null) {
            row.problem("key", row.text("key"), "row " + earlier + " gives the same figure; keep one of the rows");
        }
        Optional<String> amount = key.equals(PriceFigure.CURRENCY) ? currency(row, scope) : amount(row, key);
        return amount.filter(present -> row.isSound()).map(present -> new PriceFigure(scope, key, present));
    }

    private static PriceScope scope(Row row) {
        PriceScope.Kind kind = row.word("scope", PriceScope.Kind.class, PriceScope.Kind.FLEET);
        String name = row.words("name");
        if (kind == PriceScope.Kind.FLEET && !name.isEmpty()) {
            row.problem("name", name, "a figure of the whole fleet has no name; leave it empty, or write depot or unit under scope");
        } else if (kind != PriceScope.Kind.FLEET && name.isEmpty()) {
            row.problem("name", "", "name the " + Row.word(kind) + " whose figure it is");
        }
        return new PriceScope(kind, name);
    }

    private static Optional<String> currency(Row row, PriceScope scope) {
        String text = row.text("value").toUpperCase(Locale.ROOT);
        if (!scope.equals(PriceScope.FLEET) || !Money.isCurrency(text)) {
            row.problem("value", row.text("value"), "write the three letters of the whole fleet's currency, such as USD; depots and units have no other");
            return Optional.empty();
        }
        return Optional.of(PriceList.defaults(text).currency());
    }

    private static Optional<String> amount(Row row, String word) {
        Optional<PriceKey> known = PriceKey.of(word);
        if (known.isEmpty()) {
            row.problem("key", row.text("key"), "this is no figure of a price list; write one of " + PriceFigure.CURRENCY + ", "
                    + Arrays.stream(PriceKey.values()).map(PriceKey::word).collect(Collectors.joining(", ")));
            return Optional.empty();
        }
        PriceKey key = known.get();
        if (row.text("value").isEmpty()) {
            row.problem("value", "", "write a number, or leave the row out: " + key.meaning());
        }
        Optional<Double> value = row.quantity("value", number -> number);
        if (value.isPresent() && !(value.get() >= key.least() && value.get() <= key.most())) {
            row.problem("value", row.text("value"), "write a number from " + plain(key.least()) + " to " + plain(key.most()) + ": " + key.meaning());
        }
        return value.map(PriceRowsFile::plain);
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** The figure as it is stored, with nothing where it was not given. */
    static Optional<PriceFigure> stored(Store store, PriceFigure figure) {
        return store.prices().figure(figure.scope(), figure.key()).map(amount -> new PriceFigure(figure.scope(), figure.key(), amount));
    }
}
