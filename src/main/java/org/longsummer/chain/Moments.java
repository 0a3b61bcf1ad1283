package org.longsummer.chain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.condition.History;
import org.longsummer.chain.condition.Judged;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.screening.Field;
import org.longsummer.chain.screening.Finding;
import org.longsummer.chain.screening.Mistake;
import org.longsummer.chain.visit.Visit;

/**
 * Visits of one unit at one moment: each is judged from what was known before that moment, and one that was saved twice counts once.
 */
final class Moments {
    private Moments() {}

    /** Cuts ordered visits into runs of one unit and one moment. */
    static List<List<Visit>> of(List<Visit> ordered) {
        List<List<Visit>> moments = new ArrayList<>();
        for (Visit visit : ordered) {
            List<Visit> open = moments.isEmpty() ? null : moments.get(moments.size() - 1);
            if (open != null && open.get(0).unitId().equals(visit.unitId()) && open.get(0).at().equals(visit.at())) {
                open.add(visit);
            } else {
                List<Visit> next = new ArrayList<>(1);
                next.add(visit);
                moments.add(next);
            }
        }
        return moments;
    }

    static List<Judged> judge(History history, List<Visit> moment, Closings closings) {
        if (moment.size() == 1) {
            Judged judged = history.judge(moment.get(0), closings);
            history.workDone(moment.get(0));
            return List.of(judged);
        }
        History before = history.copy();
        List<Judged> all = new ArrayList<>();
        List<Visit> counted = new ArrayList<>();
        for (Visit visit : moment) {
            Optional<Visit> twin = counted.stream().filter(visit::isTwinOf).findFirst();
            Judged judged = before.copy().judge(visit, closings);
            if (twin.isPresent()) {
                all.add(judged.savedTwice(new Finding(Mistake.SAVED_TWICE, Field.WHOLE_VISIT, Optional.empty(), false)));
            } else {
                all.add(judged);
                counted.add(visit);
                history.judge(visit, closings);
            }
        }
        counted.forEach(history::workDone);
        return all;
    }
}
