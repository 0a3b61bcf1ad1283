package org.longsummer.demo;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What happens to an invented machine over three seasons, numbered 0 to 2 as they pass.
 *
 * @param fault what it suffers from
 * @param onset when that begins, in seasons
 * @param growth severity gained in a season
 * @param works what is done about it, in order of time
 * @param slips mistakes by the number of the visit, from 0
 * @param kit what the people who visit it have with them
 * @param visitsASeason how often they come; 0 for never
 */
record Story(Fault fault, double onset, double growth, List<Job> works, Map<Integer, Slip> slips, Kit kit, int visitsASeason) {

    /**
     * Work at the first visit after a moment, and a second reading when it is done.
     *
     * @param after in seasons
     * @param words {@code work_done} of the CSV file
     * @param cures the fault is gone afterwards
     */
    record Job(double after, String words, boolean cures) {}

    /** Instruments at hand. */
    enum Kit { FULL, NO_HUMIDITY, THERMOMETER }

    static Story sound() {
        return new Story(Fault.NONE, 9, 0, List.of(), Map.of(), Kit.FULL, 4);
    }

    static Story neverChecked() {
        return new Story(Fault.NONE, 9, 0, List.of(), Map.of(), Kit.FULL, 0);
    }

    static Story of(Fault fault, double onset, double growth, Job... works) {
        return new Story(fault, onset, growth, List.of(works), Map.of(), Kit.FULL, 4);
    }

    Story withSlip(int visit, Slip slip) {
        Map<Integer, Slip> more = new TreeMap<>(slips);
        more.put(visit, slip);
        return new Story(fault, onset, growth, works, more, kit, visitsASeason);
    }

    Story withKit(Kit other) {
        return new Story(fault, onset, growth, works, slips, other, visitsASeason);
    }

    Story visited(int timesASeason) {
        return new Story(fault, onset, growth, works, slips, kit, timesASeason);
    }
}
