package org.longsummer.chain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.condition.History;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.screening.Field;
import org.longsummer.chain.screening.Finding;
import org.longsummer.chain.screening.Mistake;
import org.longsummer.chain.visit.Visit;

/**
 * Visits of one unit at one moment: each is judged from what was known before that moment, and one that was saved twice counts once.
 */
final class Moments {
    private static final Finding SAVED_TWICE = new Finding(Mistake.SAVED_TWICE, Field.WHOLE_VISIT, Optional.empty(), false);

    private Moments() {}

    /** Cuts visits of one unit, in order of time, into moments. */
    static List<List<Visit>> of(List<Visit> ordered) {
        List<List<Visit>> moments = new ArrayList<>();
        for (Visit visit : ordered) {
            List<Visit> open = moments.isEmpty() ? null : moments.get(moments.size() - 1);
            if (open != null && open.get(0).at().equals(visit.at())) {
                open.add(visit);
            } else {
                List<Visit> next = new ArrayList<>(1);
                next.add(visit);
                moments.add(next);
            }
        }
        return moments;
    }

    /** The visits of a moment that count: the first of each that was saved twice. */
    static List<Visit> counted(List<Visit> moment) {
        List<Visit> counted = new ArrayList<>(moment.size());
        for (Visit visit : moment) {
            if (counted.stream().noneMatch(visit::isTwinOf)) {
                counted.add(visit);
            }
        }
        return counted;
    }

    static List<Verdict> judge(History history, List<Visit> moment, Closings closings) {
        if (moment.size() == 1) {
            Verdict verdict = history.judge(moment.get(0), closings);
            history.workDone(moment.get(0));
            return List.of(verdict);
        }
        History before = history.copy();
        List<Visit> counted = counted(moment);
        List<Verdict> all = new ArrayList<>();
        for (Visit visit : moment) {
            Verdict verdict = before.copy().judge(visit, closings);
            all.add(counted.contains(visit) ? verdict : verdict.with(SAVED_TWICE));
        }
        counted.forEach(visit -> history.judge(visit, closings));
        counted.forEach(history::workDone);
        return all;
    }
}
