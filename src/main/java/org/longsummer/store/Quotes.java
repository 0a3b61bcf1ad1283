package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.Quote;
import org.longsummer.quantity.Money;

/** Prices in hand for work on a unit, at most one a unit. */
public final class Quotes {
    private final Jdbi reader;
    private final Jdbi writer;

    Quotes(Jdbi reader, Jdbi writer) {
        this.reader = reader;
        this.writer = writer;
    }

    /**
     * A price in hand and where it comes from.
     *
     * @param quote work and price
     * @param offeredBy who offers it; empty when nobody said so
     * @param offeredOn when
     */
    public record InHand(Quote quote, String offeredBy, Optional<LocalDate> offeredOn) {}

    public Optional<InHand> of(String unitId) {
        return reader.withHandle(handle -> of(handle, unitId));
    }

    static Optional<InHand> of(Handle handle, String unitId) {
        return Optional.ofNullable(of(handle, List.of(unitId)).get(unitId));
    }

    static Map<String, InHand> of(Handle handle, Collection<String> unitIds) {
        Map<String, InHand> byUnit = new HashMap<>();
        if (!unitIds.isEmpty()) {
            handle.createQuery("select unit_id, work, price_minor, currency, offered_by, offered_on from quote where unit_id in (<units>)")
                    .bindList("units", List.copyOf(unitIds)).map((row, context) -> Map.entry(row.getString("unit_id"), inHand(row)))
                    .forEach(entry -> byUnit.put(entry.getKey(), entry.getValue()));
        }
        return byUnit;
    }

    private static InHand inHand(ResultSet row) throws SQLException {
        return new InHand(new Quote(Column.choice(row, "work", Work.class, null), new Money(row.getLong("price_minor"), row.getString("currency"))),
                row.getString("offered_by"), Column.day(row, "offered_on"));
    }

    /** Takes the place of the one in hand. */
    public void take(String unitId, InHand quote) {
        writer.useTransaction(handle -> {
            handle.createUpdate("""
                insert into quote (unit_id, work, price_minor, currency, offered_by, offered_on)
                values (:unit, :work, :price, :currency, :by, :day)
                on conflict (unit_id) do update set work = excluded.work, price_minor = excluded.price_minor, currency = excluded.currency,
                offered_by = excluded.offered_by, offered_on = excluded.offered_on""")
                .bind("unit", unitId).bind("work", Column.word(quote.quote().work(), null)).bind("price", quote.quote().price().minor())
                .bind("currency", quote.quote().price().currency()).bind("by", quote.offeredBy())
                .bind("day", quote.offeredOn().map(LocalDate::toString)).execute();
            LookingAhead.overtake(handle, PriceScope.unit(unitId));
        });
    }

    /** Forgets the one in hand. */
    public void forget(String unitId) {
        writer.useTransaction(handle -> {
            handle.createUpdate("delete from quote where unit_id = :unit").bind("unit", unitId).execute();
            LookingAhead.overtake(handle, PriceScope.unit(unitId));
        });
    }
}
