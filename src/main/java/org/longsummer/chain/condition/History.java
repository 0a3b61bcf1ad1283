package org.longsummer.chain.condition;

import java.time.LocalDate;
import java.util.Optional;
import org.longsummer.chain.departure.Hemisphere;
import org.longsummer.chain.departure.Observation;
import org.longsummer.chain.departure.UnitBaseline;
import org.longsummer.chain.expectation.Expectation;
import org.longsummer.chain.expectation.Expecter;
import org.longsummer.chain.expectation.UsualVolts;
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
    private final boolean explains;
    private Unit unit;
    private UnitBaseline baseline;
    private Lattice lattice;
    private Looks looks = new Looks();
    private Trail trail = new Trail();
    private Optional<Comparison> before = Optional.empty();
    private Optional<Weighing> last = Optional.empty();
    private LocalDate lastDay;
    private int judgedVisits;
    private UsualVolts usualVolts = UsualVolts.UNKNOWN;
    private Hemisphere hemisphere = Hemisphere.UNSEEN;

    /** @param explains keep the reasons and look for the next best reading; leave out for long lists, it costs more than the rest */
    public History(Unit unit, boolean explains) {
        this.unit = unit;
        this.explains = explains;
    }

    /** The same history, to go on from here without changing this one. */
    public History copy() {
        History copy = new History(unit, explains);
        copy.baseline = baseline == null ? null : baseline.copy();
        copy.lattice = lattice == null ? null : lattice.copy();
        copy.looks = looks.copy();
        copy.trail = trail.copy();
        copy.before = before;
        copy.last = Optional.empty();
        copy.lastDay = lastDay;
        copy.judgedVisits = judgedVisits;
        copy.usualVolts = usualVolts;
        copy.hemisphere = hemisphere;
        return copy;
    }

    /** Judges one visit and learns from it. */
    public Verdict judge(Visit visit, Closings closings) {
        Screening screening = Screener.screen(unit, visit);
        Known known = Known.before(closings, unit, visit);
        Expectation expectation = Expecter.expect(screening, closings, usualVolts);
        prepare(visit, expectation, known);
        Observation observation = Observation.of(expectation, known);
        Weighing weighing = new Weighing(lattice, baseline, looks, expectation, observation);
        Verdict verdict = new Judge(weighing, looks, known, judgedVisits, explains ? Optional.of(trail) : Optional.empty())
                .judge(before);
        judgedVisits += verdict.state() == State.RETAKE ? 0 : 1;
        looks.remember(screening);
        usualVolts = usualVolts.with(visit);
        last = Optional.of(weighing);
        lastDay = visit.localDay();
        return verdict;
    }

    private void prepare(Visit visit, Expectation expectation, Known known) {
        double seasons = 0;
        long today = visit.localDay().toEpochDay();
        hemisphere = hemisphere.seen(visit);
        if (lattice == null) {
            baseline = new UnitBaseline(expectation, known);
            lattice = new Lattice(baseline.start(), today);
        } else {
            seasons = Math.max(0, hemisphere.clock(unit).seasonsBetween(lastDay, visit.localDay()));
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
            startAnew(unit.replacedOn(visit.localDay()));
            return;
        }
        before = last.map(weighing -> new Comparison(weighing, visit));
        looks.work(visit.workDone());
        if (lattice != null) {
            lattice.work(visit.workDone());
        }
    }

    private void startAnew(Unit replacement) {
        unit = replacement;
        lattice = null;
        baseline = null;
        looks = new Looks();
        trail = new Trail();
        before = Optional.empty();
        last = Optional.empty();
        judgedVisits = 0;
    }
}
