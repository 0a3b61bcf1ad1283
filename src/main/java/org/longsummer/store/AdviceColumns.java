package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.longsummer.chain.weighing.Advice;
import org.longsummer.chain.weighing.Option;
import org.longsummer.quantity.Money;

/** The advice in a unit's standing. */
final class AdviceColumns {
    static final String COLUMNS = "s.advice_option, s.advice_works, s.advice_timing, s.advice_saving_minor, s.advice_waiting_minor, s.advice_currency, "
            + "s.advice_limit_on, s.advice_on";

    static final String SET = """
            advice_option = :option, advice_works = :works, advice_timing = :timing, advice_saving_minor = :saving,
            advice_waiting_minor = :waiting, advice_currency = :currency, advice_limit_on = :limit, advice_on = :day""";

    private AdviceColumns() {}

    static void write(Handle handle, Map<String, Advised> byUnit) {
        try (StatementRows rows = new StatementRows(handle, "update standing set " + SET + ", dearest = pressing / 1000.0 - :waiting_too where unit_id = :unit")) {
            byUnit.forEach((unitId, advised) -> bind(rows.bind("unit", unitId), advised).add());
            rows.execute();
        }
    }

    /** Also needs {@code waiting_too} in what orders by it. */
    static Rows bind(Rows row, Advised advised) {
        return row.bind("option", Column.word(advised.option(), null)).bind("works", WorksColumn.text(advised.works()))
                .bind("timing", Column.word(advised.timing(), null)).bind("saving", advised.saving().minor())
                .bind("waiting", advised.waitingCosts().minor()).bind("waiting_too", advised.waitingCosts().minor())
                .bind("currency", advised.saving().currency()).bind("limit", advised.limitOn().map(LocalDate::toString))
                .bind("day", advised.on().toString());
    }

    /** Empty where it was never worked out; what prices or days have overtaken is still told until it is worked out again. */
    static Optional<Advised> read(ResultSet row) throws SQLException {
        Option option = Column.choice(row, "advice_option", Option.class, null);
        if (option == null) {
            return Optional.empty();
        }
        String currency = row.getString("advice_currency");
        return Optional.of(new Advised(option, WorksColumn.works(row.getString("advice_works")),
                Column.choice(row, "advice_timing", Advice.Timing.class, null), new Money(row.getLong("advice_saving_minor"), currency),
                new Money(row.getLong("advice_waiting_minor"), currency), Column.day(row, "advice_limit_on"), Column.day(row, "advice_on").orElse(LocalDate.EPOCH)));
    }
}
