package org.longsummer.chain.learning;

import org.longsummer.chain.visit.Unit;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * How sound units of one class (nominal size, refrigerant, ducted or not) differ from the physics' default, ln split and ln amps,
 * as the first visits of its units showed.
 *
 * @param split mean of the class, ln, and its uncertainty
 * @param amps mean of the class, ln, and its uncertainty
 */
public record ClassLevel(Uncertain split, Uncertain amps) {
    /** Key of what is known of units of all classes together. */
    public static final String ALL = "class/all";

    /** A class of which nothing has been seen. Split: makers' own statements of 10 to 20 °F and sound units some degrees above. */
    public static final ClassLevel UNSEEN = new ClassLevel(new Uncertain(0.05, 0.15), new Uncertain(0, 0.06));

    public static String key(Unit unit) {
        long btuh = (long) (unit.plate().nominal().map(CoolingCapacity::btuPerHour).orElse(0.0) / 500 + 0.5) * 500;
        return "class/" + btuh + "/" + unit.plate().refrigerant().orElse("?") + "/" + unit.delivery();
    }

    static ClassLevel of(Learned learned) {
        return new ClassLevel(new Uncertain(learned.numbers().get(0), learned.numbers().get(1)),
                new Uncertain(learned.numbers().get(2), learned.numbers().get(3)));
    }
}
