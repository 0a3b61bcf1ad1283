package org.longsummer.files;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.Quote;
import org.longsummer.quantity.Money;
import org.longsummer.store.Quotes;

/** A {@code quotes.csv}: prices in hand, at most one a unit. */
final class QuotesFile {
    static final String NAME = "quotes.csv";
    private static final Layout LAYOUT = new Layout(List.of("unit_id", "work", "price", "currency", "offered_by", "offered_on"),
            List.of(List.of("unit_id"), List.of("work"), List.of("price"), List.of("currency")));

    private QuotesFile() {}

    static void write(Path file, List<Map.Entry<String, Quotes.InHand>> quotes) throws IOException {
        try (RecordWriter writer = new RecordWriter(file, LAYOUT.known())) {
            for (Map.Entry<String, Quotes.InHand> quote : quotes) {
                Quotes.InHand inHand = quote.getValue();
                writer.row(List.of(Cell.escaped(quote.getKey()), Row.word(inHand.quote().work()), inHand.quote().price().number(),
                        inHand.quote().price().currency(), Cell.escaped(inHand.offeredBy()), inHand.offeredOn().map(LocalDate::toString).orElse("")));
            }
        }
    }

    static void read(Path file, Predicate<String> isKnown, Findings findings, BiConsumer<String, Quotes.InHand> quotes) throws IOException {
        Sheet.read(file, LAYOUT, findings, row -> {
            String unitId = row.required("unit_id", "name the unit");
            if (!unitId.isEmpty() && !isKnown.test(unitId)) {
                row.problem("unit_id", unitId, "no unit has this id; add it to the units or correct it here");
            }
            Work work = row.choice("work", Work.class, null);
            String currency = row.text("currency").toUpperCase(Locale.ROOT);
            if (work == null && row.isSound()) {
                row.problem("work", "", "say what is offered");
            }
            if (!Money.isCurrency(currency)) {
                row.problem("currency", row.text("currency"), "write the three letters of a currency, such as USD");
            }
            Optional<Double> price = row.quantity("price", number -> number).filter(number -> number >= 0 && number <= 1e7);
            if (price.isEmpty()) {
                row.problem("price", row.text("price"), "write an amount from 0 to 10000000");
            }
            Optional<LocalDate> day = row.day("offered_on");
            if (row.isSound()) {
                quotes.accept(unitId, new Quotes.InHand(new Quote(work, Money.of(price.orElseThrow(), currency)), row.words("offered_by"), day));
            }
        });
    }
}
