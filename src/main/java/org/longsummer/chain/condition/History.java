package org.longsummer.chain.condition;

import java.time.LocalDate;
import org.longsummer.chain.departure.Observation;
import org.longsummer.chain.departure.UnitBaseline;
import org.longsummer.chain.expectation.Expectation;
import org.longsummer.chain.expectation.Expecter;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Known;
import org.longsummer.chain.screening.Screener;
import org.longsummer.chain.screening.Screening;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;

/**
 * The history of one unit as its visits come in: what is believed of it before and after each.
 *
 * <p>Not saved anywhere: replaying the visits gives it again.
 */
public final class History {
    private Unit unit;
    private UnitBaseline baseline;
    private Lattice lattice;
    private Looks looks = new Looks();
    private LocalDate lastDay;

    public History(Unit unit) {
        this.unit = unit;
    }

    /** Judges one visit and learns from it. */
    public Judged judge(Visit visit, Closings closings) {
        Screening screening = Screener.screen(unit, visit);
        Known known = Known.before(closings, unit, visit);
        Expectation expectation = Expecter.expect(screening, closings);
        boolean first = lattice == null;
        prepare(visit, expectation, known);
        Observation observation = Observation.of(expectation, known);
        Weighing weighing = new Weighing(lattice, baseline, looks, expectation, observation);
        Judged judged = new Judge(weighing, known, first).judge();
        looks.remember(visit);
        lastDay = visit.localDay();
        return judged;
    }

    private void prepare(Visit visit, Expectation expectation, Known known) {
        double seasons = 0;
        long today = visit.localDay().toEpochDay();
        if (lattice == null) {
            baseline = new UnitBaseline(expectation, known);
            lattice = new Lattice(baseline.start(), today);
        } else {
            seasons = RunningClock.seasonsBetween(lastDay, visit.localDay());
            looks.advance(seasons);
            lattice.advance(seasons, lastDay.toEpochDay(), today);
        }
        lattice.renew(baseline.prepare(visit, expectation, known, seasons));
    }

    /** Work done after a visit changes what is believed from then on. */
    public void workDone(Visit visit) {
        if (visit.workDone().isEmpty()) {
            return;
        }
        if (visit.workDone().contains(Work.UNIT_REPLACED)) {
            unit = unit.replacedOn(visit.localDay());
            lattice = null;
            baseline = null;
            looks = new Looks();
            return;
        }
        if (visit.workDone().contains(Work.FILTER)) {
            looks.filterChanged();
        }
        if (visit.workDone().contains(Work.CAPACITOR)) {
            looks.capacitorChanged();
        }
        if (lattice != null) {
            lattice.work(visit.workDone());
        }
    }
}
