package org.longsummer.store;

import java.util.List;
import org.longsummer.chain.condition.State;

/**
 * What became of the acts of a fleet: a unit that was called act, until a reading says otherwise. By what was written down: work that
 * nobody noted cannot be known.
 *
 * @param acts how many times a unit became act
 * @param confirmed work was done and the next reading no longer said act
 * @param notCured work was done and the reading after it still said act
 * @param wentAway no work was done, and a later reading said steady: a false alarm, or it went by itself
 * @param awaiting work was done and nobody has read since
 * @param open nothing was done yet
 * @param misses a compressor that did not run on a unit whose reading before had said steady
 */
public record ActHistory(int acts, int confirmed, int notCured, int wentAway, int awaiting, int open, int misses) {
    public static final ActHistory NONE = new ActHistory(0, 0, 0, 0, 0, 0, 0);

    /**
     * A visit that was judged.
     *
     * @param state steady, drifting or act
     * @param notCooling the compressor did not run
     * @param workDone work was done after its readings
     */
    public record Seen(State state, boolean notCooling, boolean workDone) {}

    /** The history of one unit, from its judged visits in order of time. */
    public static ActHistory of(List<Seen> visits) {
        ActHistory all = NONE;
        int i = 0;
        State before = null;
        while (i < visits.size()) {
            Seen visit = visits.get(i);
            if (visit.notCooling() && before == State.STEADY) {
                all = all.plus(new ActHistory(0, 0, 0, 0, 0, 0, 1));
            }
            int end = i + 1;
            if (visit.state() == State.ACT) {
                end = endOfAct(visits, i);
                all = all.plus(outcome(visits, i, end));
            }
            before = visits.get(end - 1).state();
            i = end;
        }
        return all;
    }

    /** Behind the last visit of an act: drifting without work goes on with it. */
    private static int endOfAct(List<Seen> visits, int start) {
        boolean worked = visits.get(start).workDone();
        int end = start + 1;
        while (end < visits.size() && (visits.get(end).state() == State.ACT || !worked && visits.get(end).state() == State.DRIFTING)) {
            worked |= visits.get(end).workDone();
            end++;
        }
        return end;
    }

    private static ActHistory outcome(List<Seen> visits, int start, int end) {
        boolean worked = visits.subList(start, end).stream().anyMatch(Seen::workDone);
        if (end < visits.size()) {
            return worked ? new ActHistory(1, 1, 0, 0, 0, 0, 0) : new ActHistory(1, 0, 0, 1, 0, 0, 0);
        }
        if (!worked) {
            return new ActHistory(1, 0, 0, 0, 0, 1, 0);
        }
        boolean readAgain = visits.subList(start, end - 1).stream().anyMatch(Seen::workDone);
        return readAgain ? new ActHistory(1, 0, 1, 0, 0, 0, 0) : new ActHistory(1, 0, 0, 0, 1, 0, 0);
    }

    public ActHistory plus(ActHistory other) {
        return new ActHistory(acts + other.acts, confirmed + other.confirmed, notCured + other.notCured, wentAway + other.wentAway,
                awaiting + other.awaiting, open + other.open, misses + other.misses);
    }
}
