package org.longsummer.chain.condition;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
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
    private final boolean keepsReasons;
    private final Predicate<Visit> explained;
    private final Set<Ingredient> without;
    private Unit unit;
    private UnitBaseline baseline;
    private Lattice lattice;
    private Looks looks = new Looks();
    private Trail trail = new Trail();
    private Optional<Comparison> before = Optional.empty();
    private Optional<BayesUpdate> last = Optional.empty();
    private LocalDate lastDay;
    private int judgedVisits;
    /** Running seasons that passed before work done after a retake, in which the unit's own offsets have yet to walk. */
    private double unwalked;
    private UsualVolts usualVolts = UsualVolts.UNKNOWN;
    private Hemisphere hemisphere = Hemisphere.UNSEEN;

    /** @param explains keep the reasons and look for the next best reading; leave out for long lists, it costs more than the rest */
    public History(Unit unit, boolean explains) {
        this(unit, explains, Set.of());
    }

    /** @param explained the visits whose verdicts give their reasons and the next best reading: looking for it at one costs more than judging ten */
    public History(Unit unit, Predicate<Visit> explained) {
        this(unit, true, explained, Set.of());
    }

    /** @param without what is left out to see what it is worth */
    History(Unit unit, boolean explains, Set<Ingredient> without) {
        this(unit, explains, any -> explains, without);
    }

    private History(Unit unit, boolean keepsReasons, Predicate<Visit> explained, Set<Ingredient> without) {
        this.unit = unit;
        this.keepsReasons = keepsReasons;
        this.explained = explained;
        this.without = without;
    }

    /** The same history, to go on from here without changing this one. */
    public History copy() {
        History copy = new History(unit, keepsReasons, explained, without);
        copy.baseline = baseline == null ? null : baseline.copy();
        copy.lattice = lattice == null ? null : lattice.copy();
        copy.looks = looks.copy();
        copy.trail = trail.copy();
        copy.before = before;
        copy.last = Optional.empty();
        copy.lastDay = lastDay;
        copy.judgedVisits = judgedVisits;
        copy.unwalked = unwalked;
        copy.usualVolts = usualVolts;
        copy.hemisphere = hemisphere;
        return copy;
    }

    /** Judges one visit and learns from it; a visit whose readings are a mistake leaves no trace. */
    public Verdict judge(Visit visit, Closings closings) {
        Screening screening = Screener.screen(unit, visit);
        if (screening.isRetake()) {
            last = Optional.empty();
            return copy().judge(screening, closings);
        }
        return judge(screening, closings);
    }

    private Verdict judge(Screening screening, Closings closings) {
        Visit visit = screening.visit();
        Known known = Known.before(closings, unit, visit);
        Expectation expectation = Expecter.expect(screening, closings, usualVolts);
        prepare(visit, expectation, known);
        Observation observation = Observation.of(expectation, known);
        BayesUpdate update = new BayesUpdate(lattice, baseline, looks, expectation, observation, without);
        Verdict verdict = new Judge(update, looks, known, judgedVisits, keepsReasons ? Optional.of(trail) : Optional.empty(),
                explained.test(visit)).judge(before);
        judgedVisits += verdict.state() == State.RETAKE ? 0 : 1;
        looks.remember(screening);
        usualVolts = usualVolts.with(visit);
        last = Optional.of(update);
        lastDay = visit.localDay();
        return verdict;
    }

    private void prepare(Visit visit, Expectation expectation, Known known) {
        double seasons = 0;
        hemisphere = hemisphere.seen(visit);
        if (lattice == null) {
            baseline = new UnitBaseline(expectation, known);
            lattice = new Lattice(baseline.start(), visit.localDay().toEpochDay());
        } else {
            seasons = unwalked + pass(visit.localDay());
            unwalked = 0;
        }
        lattice.renew(baseline.prepare(visit, expectation, known, seasons));
    }

    /** Time passes until a day; the running seasons that passed. */
    private double pass(LocalDate day) {
        double seasons = without.contains(Ingredient.RUN_HOUR_CLOCK) ? (day.toEpochDay() - lastDay.toEpochDay()) / 365.25
                : Math.max(0, hemisphere.clock(unit).seasonsBetween(lastDay, day));
        looks.advance(seasons);
        lattice.advance(seasons, lastDay.toEpochDay(), day.toEpochDay());
        return seasons;
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
        before = last.map(update -> new Comparison(update, visit));
        if (lattice != null) {
            unwalked += pass(visit.localDay());
            lastDay = visit.localDay();
            lattice.work(visit.workDone());
        }
        looks.work(visit.workDone());
        trail.turn();
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
