package org.longsummer.web;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.longsummer.chain.weighing.PriceKey;
import org.longsummer.chain.weighing.PriceList;
import org.longsummer.quantity.Money;
import org.longsummer.wire.Boxes;

/** A price list as boxes, one a figure by its key; shares in percent. A box that is there and empty goes back to the wider list. */
final class PriceForm {
    private PriceForm() {}

    static Map<PriceKey, Optional<Double>> read(Boxes boxes, String currency) {
        Map<PriceKey, Optional<Double>> figures = new EnumMap<>(PriceKey.class);
        for (PriceKey key : PriceKey.values()) {
            if (boxes.has(key.word())) {
                figures.put(key, number(boxes, key, currency));
            }
        }
        return figures;
    }

    private static Optional<Double> number(Boxes boxes, PriceKey key, String currency) {
        double scale = scale(key);
        String unit = key.kind() == PriceKey.Kind.MONEY ? currency : key.kind() == PriceKey.Kind.SHARE ? "%" : "";
        Optional<Double> number = key.most() >= 1000 ? boxes.largeNumber(key.word(), key.least() * scale, key.most() * scale, unit)
                : boxes.number(key.word(), key.least() * scale, key.most() * scale, unit);
        boolean inMinorUnits = key.kind() == PriceKey.Kind.MONEY && !isPerUnitOfEnergy(key);
        if (inMinorUnits && number.filter(amount -> !WeighingApi.isExact(amount, currency)).isPresent()) {
            boxes.refuse(key.word(), "An amount in " + currency + " has at most " + Money.decimals(currency) + " decimals.", "Round it.");
        }
        return number.map(given -> BigDecimal.valueOf(given).divide(BigDecimal.valueOf(scale)).doubleValue());
    }

    /** Often a fraction of a minor unit. */
    private static boolean isPerUnitOfEnergy(PriceKey key) {
        return key == PriceKey.ENERGY_PRICE || key == PriceKey.GENERATOR_PRICE;
    }

    static double scale(PriceKey key) {
        return key.kind() == PriceKey.Kind.SHARE ? 100 : 1;
    }

    static String text(PriceKey key, double number) {
        return BigDecimal.valueOf(number).multiply(BigDecimal.valueOf(scale(key))).stripTrailingZeros().toPlainString();
    }

    static void refuseContradictions(Boxes boxes, PriceList merged) {
        if (merged.number(PriceKey.LIFE_EARLY) >= merged.number(PriceKey.LIFE_LATE)) {
            boxes.refuse(PriceKey.LIFE_EARLY.word(), "The age at which one in ten is gone lies before the one at which nine in ten are, "
                    + text(PriceKey.LIFE_LATE, merged.number(PriceKey.LIFE_LATE)) + " years.", "Check both.");
        }
    }
}
