package org.longsummer.store;

import java.util.HashMap;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.longsummer.chain.weighing.PriceKey;
import org.longsummer.chain.weighing.PriceList;

/** Every figure that somebody gave, read at once for many units. */
final class PriceTable {
    private final String currency;
    private final Map<PriceScope, PriceList> given = new HashMap<>();

    private PriceTable(String currency) {
        this.currency = currency;
    }

    static PriceTable read(Handle handle) {
        PriceTable table = new PriceTable(Prices.currency(handle));
        handle.createQuery("select scope, name, figure, amount from price").map((row, context) -> {
            PriceScope scope = new PriceScope(Column.choice(row, "scope", PriceScope.Kind.class, null), row.getString("name"));
            double amount = Prices.amount(row.getString("figure"), row.getString("amount"));
            PriceKey.of(row.getString("figure")).ifPresent(key -> table.given.merge(scope, PriceList.defaults(table.currency).with(key, amount),
                    PriceList::overriddenBy));
            return scope;
        }).list();
        return table;
    }

    /** The list that counts for a unit: the fleet's, over it the depot's, over it its own. */
    PriceList of(FleetUnit unit) {
        PriceList list = layer(PriceScope.FLEET, PriceList.defaults(currency));
        if (!unit.unit().site().isEmpty()) {
            list = layer(PriceScope.depot(unit.unit().site()), list);
        }
        return layer(PriceScope.unit(unit.id()), list);
    }

    private PriceList layer(PriceScope scope, PriceList below) {
        PriceList own = given.get(scope);
        return own == null ? below : below.overriddenBy(own);
    }
}
