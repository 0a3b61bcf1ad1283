package org.longsummer.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.longsummer.chain.weighing.PriceKey;
import org.longsummer.store.Prices;
import org.longsummer.wire.Boxes;

/**
 * A price list as its page shows it.
 *
 * @param scope fleet, depot or unit
 * @param label the depot's name or the unit's label; empty for the fleet
 * @param depot the unit's depot, or the depot itself; empty for the fleet
 * @param currency of all amounts
 * @param figures in the order of the list
 */
record PriceView(String scope, String label, String depot, String currency, List<Figure> figures) {
    /** What a private owner is asked for, and nothing else. */
    private static final Set<PriceKey> OWNERS = Set.of(PriceKey.CALL_OUT, PriceKey.SHOP_RATE, PriceKey.REPLACEMENT, PriceKey.NIGHT_PRICE, PriceKey.OCCUPANCY);

    /**
     * One figure.
     *
     * @param key in forms and files
     * @param meaning in words
     * @param unit currency, % or empty
     * @param own what was given for this very scope; empty when nothing was
     * @param wider what counts where nothing is given here
     * @param widerFrom default, fleet or depot: where that comes from
     * @param owners among the five of an owner's version
     */
    record Figure(String key, String meaning, String unit, String own, String wider, String widerFrom, boolean owners) {}

    static PriceView of(String scope, String label, String depot, List<Prices.Layer> layers) {
        Prices.Layer own = layers.get(layers.size() - 1);
        List<Figure> figures = new ArrayList<>();
        for (PriceKey key : PriceKey.values()) {
            String unit = switch (key.kind()) {
                case MONEY -> own.own().currency();
                case SHARE -> "%";
                case NUMBER -> "";
            };
            double wider = key.standard();
            String from = "default";
            for (Prices.Layer layer : layers.subList(0, layers.size() - 1)) {
                wider = layer.own().isGiven(key) ? layer.own().number(key) : wider;
                from = layer.own().isGiven(key) ? Boxes.word(layer.scope().kind()) : from;
            }
            figures.add(new Figure(key.word(), key.meaning(), unit, own.own().isGiven(key) ? PriceForm.text(key, own.own().number(key)) : "",
                    PriceForm.text(key, wider), from, OWNERS.contains(key)));
        }
        return new PriceView(scope, label, depot, own.own().currency(), figures);
    }
}
