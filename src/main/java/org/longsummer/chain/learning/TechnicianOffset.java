package org.longsummer.chain.learning;

import org.longsummer.chain.visit.Visit;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * By how much one technician's instruments of one season read high: split in kelvins, amps in ln.
 *
 * @param split K
 * @param amps ln
 */
public record TechnicianOffset(Uncertain split, Uncertain amps) {
    /** Prior of any set of instruments (practice): 0.6 °F between two probes, 1.2 % of a clamp. */
    public static final TechnicianOffset UNKNOWN = new TechnicianOffset(new Uncertain(0, 0.33), new Uncertain(0, 0.012));

    public static String key(Visit visit) {
        return "technician/" + visit.technician() + "/" + visit.localDay().getYear();
    }

    static boolean isOfYearFrom(String key, int firstYear) {
        return key.startsWith("technician/") && Integer.parseInt(key.substring(key.lastIndexOf('/') + 1)) >= firstYear;
    }

    static TechnicianOffset of(Learned learned) {
        return new TechnicianOffset(new Uncertain(learned.numbers().get(0), learned.numbers().get(1)),
                new Uncertain(learned.numbers().get(2), learned.numbers().get(3)));
    }
}
