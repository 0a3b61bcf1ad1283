package org.longsummer.chain;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.condition.History;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

/**
 * A unit whose visits have been taken in, ready to judge one more again and again while it is typed. What it answers is what
 * {@link Assessment#ofUnit} says of that visit; only the earlier ones are not judged anew for each letter typed.
 */
public final class Continuation {
    private final Unit unit;
    private final List<Visit> visits;
    private final Closings closings;
    private final History history;
    private boolean opened;

    /** @param visits of this unit that count, in any order */
    public Continuation(Unit unit, List<Visit> visits, Closings closings) {
        this.unit = unit;
        this.visits = new ArrayList<>(visits);
        this.visits.sort(Assessment.IN_ORDER);
        this.closings = closings;
        this.history = new History(unit, visit -> opened);
        for (List<Visit> moment : Moments.of(this.visits)) {
            Moments.judge(history, moment, closings);
        }
        this.opened = true;
    }

    /** What one more visit says; nothing of it stays. */
    public Verdict judge(Visit next) {
        if (visits.isEmpty() || next.at().isAfter(visits.get(visits.size() - 1).at())) {
            return history.copy().judge(next, closings);
        }
        List<Visit> all = new ArrayList<>(visits);
        all.add(next);
        return Assessment.explaining(unit, all, closings, next::equals).stream().filter(verdict -> verdict.visit() == next).findFirst().orElseThrow();
    }
}
