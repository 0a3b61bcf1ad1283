package org.longsummer.store;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.longsummer.chain.weighing.PriceKey;
import org.longsummer.chain.weighing.PriceList;

/** The price lists: what somebody gave for the fleet, for a depot or for a unit; all else is a default. */
public final class Prices {
    /** Until somebody names another one. */
    public static final String USUAL_CURRENCY = "USD";
    private static final String CURRENCY = "currency";

    private final Jdbi reader;
    private final Jdbi writer;

    Prices(Jdbi reader, Jdbi writer) {
        this.reader = reader;
        this.writer = writer;
    }

    /**
     * The figures of one scope.
     *
     * @param scope whose they are
     * @param own the figures that were given for it, and nothing else
     */
    public record Layer(PriceScope scope, PriceList own) {}

    /** The fleet's currency. */
    public String currency() {
        return reader.withHandle(Prices::currency);
    }

    /** Names the fleet's currency; figures are not converted. */
    public void chooseCurrency(String currency) {
        String checked = PriceList.defaults(currency).currency();
        writer.useTransaction(handle -> {
            upsert(handle, PriceScope.FLEET, Map.of(CURRENCY, checked));
            LookingAhead.overtake(handle, PriceScope.FLEET);
        });
    }

    /** What was given for one scope alone. */
    public PriceList given(PriceScope scope) {
        return reader.inTransaction(handle -> given(handle, scope, currency(handle)));
    }

    /** What was given for a unit, from the widest to the narrowest: fleet, its depot, itself. */
    public List<Layer> layers(FleetUnit unit) {
        List<PriceScope> scopes = new ArrayList<>(List.of(PriceScope.FLEET));
        if (!unit.unit().site().isEmpty()) {
            scopes.add(PriceScope.depot(unit.unit().site()));
        }
        scopes.add(PriceScope.unit(unit.id()));
        return layers(scopes);
    }

    /** What was given for a depot: the fleet's, then its own. */
    public List<Layer> layers(String depot) {
        return layers(List.of(PriceScope.FLEET, PriceScope.depot(depot)));
    }

    private List<Layer> layers(List<PriceScope> scopes) {
        return reader.inTransaction(handle -> {
            String currency = currency(handle);
            return scopes.stream().map(scope -> new Layer(scope, given(handle, scope, currency))).toList();
        });
    }

    /** The list that counts for a unit. */
    public PriceList of(FleetUnit unit) {
        return merged(layers(unit));
    }

    /** One list out of several, the later ones before the earlier ones. */
    public static PriceList merged(List<Layer> layers) {
        PriceList list = layers.get(0).own();
        for (Layer layer : layers.subList(1, layers.size())) {
            list = list.overriddenBy(layer.own());
        }
        return list;
    }

    /** Changes figures of one scope; an empty one goes back to what is given for the wider scope. */
    public void change(PriceScope scope, Map<PriceKey, Optional<Double>> figures) {
        Map<String, String> written = new LinkedHashMap<>();
        List<String> removed = new ArrayList<>();
        new EnumMap<>(figures).forEach((key, value) -> value.ifPresentOrElse(
                number -> written.put(key.word(), BigDecimal.valueOf(number).stripTrailingZeros().toPlainString()), () -> removed.add(key.word())));
        writer.useTransaction(handle -> {
            upsert(handle, scope, written);
            removed.forEach(figure -> handle.createUpdate("delete from price where scope = :scope and name = :name and figure = :figure")
                    .bind("scope", word(scope)).bind("name", scope.name()).bind("figure", figure).execute());
            LookingAhead.overtake(handle, scope);
        });
    }

    private static void upsert(Handle handle, PriceScope scope, Map<String, String> figures) {
        PreparedBatch batch = handle.prepareBatch("""
                insert into price (scope, name, figure, amount) values (:scope, :name, :figure, :amount)
                on conflict (scope, name, figure) do update set amount = excluded.amount where amount <> excluded.amount""");
        figures.forEach((figure, amount) -> batch.bind("scope", word(scope)).bind("name", scope.name()).bind("figure", figure)
                .bind("amount", amount).add());
        if (batch.size() > 0) {
            batch.execute();
        }
    }

    /** A figure's number; 0 for what is none, such as the currency. */
    static double amount(String figure, String text) {
        return PriceKey.of(figure).isPresent() ? Double.parseDouble(text) : 0;
    }

    static String currency(Handle handle) {
        return handle.createQuery("select amount from price where scope = 'fleet' and name = '' and figure = :figure").bind("figure", CURRENCY)
                .mapTo(String.class).findOne().orElse(USUAL_CURRENCY);
    }

    private static PriceList given(Handle handle, PriceScope scope, String currency) {
        return handle.createQuery("select figure, amount from price where scope = :scope and name = :name")
                .bind("scope", word(scope)).bind("name", scope.name())
                .reduceRows(new PriceList[] {PriceList.defaults(currency)}, (list, row) -> {
                    PriceKey.of(row.getColumn("figure", String.class)).ifPresent(key ->
                            list[0] = list[0].with(key, Double.parseDouble(row.getColumn("amount", String.class))));
                    return list;
                })[0];
    }

    private static String word(PriceScope scope) {
        return Column.word(scope.kind(), null);
    }
}
