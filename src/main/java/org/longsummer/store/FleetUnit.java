package org.longsummer.store;

import java.text.Normalizer;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.longsummer.chain.visit.Unit;

/**
 * A unit as a fleet keeps it: what the chain judges it by, and what people need to find and own it. Texts are empty when not known.
 *
 * @param unit what the chain judges it by
 * @param make maker on the plate
 * @param model model on the plate
 * @param serial serial number as written
 * @param vehicle the vehicle it sits on
 * @param roofPosition where on the roof: front, rear ...
 * @param owner whose it is
 * @param warrantyUntil last day of the warranty, where known
 * @param duty in service, laid up or sold
 */
public record FleetUnit(Unit unit, String make, String model, String serial, String vehicle, String roofPosition, String owner,
        Optional<LocalDate> warrantyUntil, Duty duty) {

    /** Whether a unit is looked after now. */
    public enum Duty { IN_SERVICE, OUT_OF_SERVICE, SOLD }

    /** A unit of which nothing more is known, in service. */
    public static FleetUnit of(Unit unit) {
        return new FleetUnit(unit, "", "", "", "", "", "", Optional.empty(), Duty.IN_SERVICE);
    }

    /** The same with another unit to be judged by. */
    public FleetUnit with(Unit other) {
        return new FleetUnit(other, make, model, serial, vehicle, roofPosition, owner, warrantyUntil, duty);
    }

    public String id() {
        return unit.id();
    }

    /** Serial numbers that look alike when written by hand have the same key: O and 0, I and 1, S and 5, any case, no spaces. */
    public static String serialKey(String serial) {
        return serial.toUpperCase(Locale.ROOT).replaceAll("[\\s\\p{Punct}]", "").replace('O', '0').replace('I', '1').replace('S', '5');
    }

    /** What a search by text looks in, folded. */
    String searchText() {
        return folded(String.join("\n", unit.id(), unit.label(), serial, serialKey(serial), vehicle, roofPosition, owner, make, model));
    }

    /** In lower case and one spelling of accents, with what looks alike when written by hand made the same: o and 0, i and 1, s and 5. */
    static String folded(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC).toLowerCase(Locale.ROOT).replace('o', '0').replace('i', '1').replace('s', '5');
    }
}
