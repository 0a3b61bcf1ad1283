package org.longsummer.chain;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.departure.SoundHistory;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Lesson;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

/** What the visits of one unit teach across units, as they come in. */
public final class UnitLessons {
    private final SoundHistory history;
    private Instant last = Instant.MIN;

    public UnitLessons(Unit unit) {
        this.history = new SoundHistory(unit);
    }

    /** The visit is later than all that were taken in. */
    public boolean canGoOnWith(Visit visit) {
        return visit.at().isAfter(last);
    }

    /**
     * Takes the next visits in.
     *
     * @param visits in order of time, then id; later than all before, and all that there are of each moment
     * @return a lesson for each that counts
     */
    public List<Lesson> learn(List<Visit> visits, Closings closings) {
        List<Lesson> lessons = new ArrayList<>(visits.size());
        for (List<Visit> moment : Moments.of(visits)) {
            for (Visit visit : Moments.counted(moment)) {
                lessons.add(history.learn(visit, closings));
            }
            last = moment.get(0).at();
        }
        return lessons;
    }
}
