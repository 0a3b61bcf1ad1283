package org.longsummer.chain.weighing;

/**
 * Where the advice changes when one figure moves and all others stay.
 *
 * @param figure what moves
 * @param value the figure at which it changes, in the figure's own unit
 * @param above whether the other advice holds above that value; below it otherwise
 * @param to the advice beyond it
 */
public record Flip(Figure figure, double value, boolean above, Option to) {

    /** Figures that are moved one at a time. */
    public enum Figure {
        AGE(null, 0, 20),
        CALL_OUT(PriceKey.CALL_OUT, 0, 1000),
        SHOP_RATE(PriceKey.SHOP_RATE, 0, 500),
        CAPACITOR_PART(PriceKey.CAPACITOR_PART, 0, 1000),
        COIL_HOURS(PriceKey.COIL_HOURS, 0, 10),
        REPLACEMENT(PriceKey.REPLACEMENT, 100, 10_000),
        EMERGENCY_PREMIUM(PriceKey.EMERGENCY_PREMIUM, 0, 5000),
        LOST_NIGHTS(PriceKey.LOST_NIGHTS, 0, 60),
        NIGHT_PRICE(PriceKey.NIGHT_PRICE, 0, 1000),
        WEAK_NIGHT_REFUND(PriceKey.WEAK_NIGHT_REFUND, 0, 0.2),
        ENERGY_PRICE(PriceKey.ENERGY_PRICE, 0, 2),
        GENERATOR_SHARE(PriceKey.GENERATOR_SHARE, 0, 1);

        private final PriceKey key;
        private final double from;
        private final double to;

        Figure(PriceKey key, double from, double to) {
            this.key = key;
            this.from = from;
            this.to = to;
        }

        /** The key of the price list; null for the age. */
        PriceKey key() {
            return key;
        }

        /** Smallest value that is tried. */
        double from() {
            return from;
        }

        /** Largest value that is tried. */
        double to() {
            return to;
        }

        /** What it is, in words. */
        public String phrase() {
            return switch (this) {
                case AGE -> "age";
                case CALL_OUT -> "a call-out";
                case SHOP_RATE -> "a shop hour";
                case CAPACITOR_PART -> "a run capacitor";
                case COIL_HOURS -> "cleaning a coil";
                case REPLACEMENT -> "a new unit";
                case EMERGENCY_PREMIUM -> "the emergency premium";
                case LOST_NIGHTS -> "nights lost";
                case NIGHT_PRICE -> "a night";
                case WEAK_NIGHT_REFUND -> "refund for a night with a weak unit";
                case ENERGY_PRICE -> "a kWh";
                case GENERATOR_SHARE -> "running on generator";
            };
        }
    }
}
