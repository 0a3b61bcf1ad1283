package org.longsummer.chain.weighing;

/** Three invented price lists, as different as owners are. */
public final class PriceLists {
    public static final PriceList RENTAL = list(90, 600, 6, 90, 0.16, 0.6);
    public static final PriceList PRIVATE = list(130, 400, 3, 120, 0.17, 0.2);
    public static final PriceList REMOTE = list(350, 1200, 14, 60, 0.45, 0.75);

    private PriceLists() {}

    private static PriceList list(double callOut, double premium, double nights, double night, double energy, double occupancy) {
        return PriceList.defaults("USD").with(PriceKey.SHOP_RATE, 150).with(PriceKey.CALL_OUT, callOut)
                .with(PriceKey.EMERGENCY_PREMIUM, premium).with(PriceKey.LOST_NIGHTS, nights).with(PriceKey.NIGHT_PRICE, night)
                .with(PriceKey.ENERGY_PRICE, energy).with(PriceKey.OCCUPANCY, occupancy).with(PriceKey.REPLACEMENT, 1900)
                .with(PriceKey.COIL_HOURS, 1.5).with(PriceKey.CAPACITOR_PART, 40).with(PriceKey.CAPACITOR_HOURS, 0.5);
    }
}
