package org.longsummer.store;

/**
 * Whom a price list is for.
 *
 * @param kind the whole fleet, a depot or a unit
 * @param name the depot's name or the unit's id; empty for the fleet
 */
public record PriceScope(Kind kind, String name) {
    /** Everybody who has no figures of his own. */
    public static final PriceScope FLEET = new PriceScope(Kind.FLEET, "");

    /** From the widest to the narrowest: what is given for the narrower one counts. */
    public enum Kind { FLEET, DEPOT, UNIT }

    public static PriceScope depot(String name) {
        return new PriceScope(Kind.DEPOT, name);
    }

    public static PriceScope unit(String id) {
        return new PriceScope(Kind.UNIT, id);
    }
}
