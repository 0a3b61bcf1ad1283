package org.longsummer.chain;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.condition.History;
import org.longsummer.chain.condition.Judged;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

/** One unit judged as its visits come in, in order of time, without the reasons. */
public final class UnitReplay {
    private final History history;
    private Instant last = Instant.MIN;

    public UnitReplay(Unit unit) {
        this.history = new History(unit, false);
    }

    /** The visit is later than all that were judged. */
    public boolean canGoOnWith(Visit visit) {
        return visit.at().isAfter(last);
    }

    /**
     * Judges the next visits.
     *
     * @param visits in order of time, then id; later than all before, and all that there are of each moment
     */
    public List<Judged> judge(List<Visit> visits, Closings closings) {
        List<Judged> all = new ArrayList<>(visits.size());
        for (List<Visit> moment : Moments.of(visits)) {
            all.addAll(Moments.judge(history, moment, closings));
            last = moment.get(0).at();
        }
        return all;
    }
}
