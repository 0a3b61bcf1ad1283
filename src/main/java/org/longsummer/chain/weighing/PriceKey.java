package org.longsummer.chain.weighing;

import java.util.Optional;

/**
 * One figure of a price list. Its lower-case name is the key in files. All defaults are ours, for a start; none is a fact.
 *
 * <p>Amounts of money are in the list's currency.
 */
public enum PriceKey {
    SHOP_RATE(Kind.MONEY, 150, 0, 10_000, "shop rate an hour"),
    CALL_OUT(Kind.MONEY, 110, 0, 100_000, "call-out, once a call"),
    EMERGENCY_PREMIUM(Kind.MONEY, 500, 0, 1e6, "extra cost when it quits in season: emergency call, express freight"),
    LOST_NIGHTS(Kind.NUMBER, 4, 0, 365, "nights lost when it quits in season, until it runs again"),
    NIGHT_PRICE(Kind.MONEY, 100, 0, 1e6, "worth of a night: rental price, or what a hot night is worth to you"),
    OCCUPANCY(Kind.SHARE, 0.4, 0, 1, "share of the season's days on which it is used"),
    WEAK_NIGHT_REFUND(Kind.SHARE, 0, 0, 1, "share of the night price given back, on average, for a night with a weak unit"),
    ENERGY_PRICE(Kind.MONEY, 0.17, 0, 100, "shore power a kWh"),
    GENERATOR_PRICE(Kind.MONEY, 0.80, 0, 100, "generator power a kWh"),
    GENERATOR_SHARE(Kind.SHARE, 0, 0, 1, "share of the running on generator"),
    REPLACEMENT(Kind.MONEY, 1900, 0, 1e7, "a new unit, planned, fitted, all-in"),
    REPLACEMENT_HOURS(Kind.NUMBER, 3, 0, 100, "hours to fit a new unit, paid when the warranty gives the unit"),
    SALVAGE(Kind.MONEY, 0, 0, 1e6, "what the old unit still brings"),
    FILTER_PART(Kind.MONEY, 10, 0, 10_000, "a filter; anybody can change it, no call-out"),
    COIL_HOURS(Kind.NUMBER, 1.5, 0, 100, "hours to clean one coil"),
    CAPACITOR_PART(Kind.MONEY, 40, 0, 10_000, "a run capacitor"),
    CAPACITOR_HOURS(Kind.NUMBER, 0.5, 0, 100, "hours to change it"),
    DIVIDER_PART(Kind.MONEY, 15, 0, 10_000, "tape and foam for the divider"),
    DIVIDER_HOURS(Kind.NUMBER, 0.5, 0, 100, "hours to seal it"),
    FAN_MOTOR_PART(Kind.MONEY, 180, 0, 100_000, "a fan motor"),
    FAN_MOTOR_HOURS(Kind.NUMBER, 2, 0, 100, "hours to change it"),
    SEALED_SYSTEM_PART(Kind.MONEY, 350, 0, 100_000, "parts and refrigerant for work on the sealed circuit"),
    SEALED_SYSTEM_HOURS(Kind.NUMBER, 5, 0, 100, "hours of certified hands for it"),
    LIFE_USED(Kind.SHARE, 0.6, 0, 1, "share of the life left at the end of the look-ahead that is still worth something to you: vehicles are sold"),
    LIFE_EARLY(Kind.NUMBER, 5, 0.5, 60, "age in years at which one unit in ten is gone"),
    LIFE_LATE(Kind.NUMBER, 15, 1, 100, "age in years at which nine in ten are"),
    LOOKS_PER_SEASON(Kind.NUMBER, 4, 0, 100, "times a season somebody reads the unit"),
    DISCOUNT_RATE(Kind.SHARE, 0.05, 0, 1, "discount rate a year"),
    HORIZON_YEARS(Kind.NUMBER, 1, 0.25, 20, "years that are looked ahead; then one decides again"),
    MATERIAL_SAVING(Kind.MONEY, 25, 0, 1e6, "a difference below this does not matter");

    /** What kind of figure it is. */
    public enum Kind { MONEY, NUMBER, SHARE }

    private final Kind kind;
    private final double standard;
    private final double least;
    private final double most;
    private final String meaning;

    PriceKey(Kind kind, double standard, double least, double most, String meaning) {
        this.kind = kind;
        this.standard = standard;
        this.least = least;
        this.most = most;
        this.meaning = meaning;
    }

    /** The key in a file. */
    public String word() {
        StringBuilder word = new StringBuilder();
        for (int i = 0; i < name().length(); i++) {
            char letter = name().charAt(i);
            word.append(letter == '_' ? '_' : (char) (letter - 'A' + 'a'));
        }
        return word.toString();
    }

    /** The key of a word in a file; empty when there is none. */
    public static Optional<PriceKey> of(String word) {
        for (PriceKey key : values()) {
            if (key.word().equals(word)) {
                return Optional.of(key);
            }
        }
        return Optional.empty();
    }

    public Kind kind() {
        return kind;
    }

    /** Our default. */
    public double standard() {
        return standard;
    }

    public double least() {
        return least;
    }

    public double most() {
        return most;
    }

    public String meaning() {
        return meaning;
    }
}
