package org.longsummer.chain.weighing;

import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.outlook.Effects;
import org.longsummer.chain.outlook.QuittingHazard;

/**
 * What one possible state of a unit is expected to cost from each step to the horizon, worked out backwards.
 *
 * <p>In each step it runs, and quits with a chance, of its fault or of age: then the emergency is paid and the fault's remedy or a new unit,
 * and that goes on. If it does not, somebody may find the fault; found, the cheaper of its remedy and of leaving it is taken. Exact first and second
 * moments; a unit's successor is counted at its mean and does not quit again within the horizon.
 */
final class Course {
    static final int ENERGY = 0;
    static final int BREAKDOWN = 1;
    static final int LATER_WORK = 2;
    static final int AFTERWARDS = 3;
    static final int PARTS = 4;
    /** Severity beyond which nothing grows worse. */
    private static final double MOST_SEVERE = 1.6;

    /** Mean cost from the start of each step. */
    final double[] mean;
    /** Mean of its square. */
    final double[] square;
    /** The mean from the start, by what it is for. */
    final double[] parts = new double[PARTS];
    /** Probability of quitting from the start to the start of each step. */
    final double[] quit;
    /** Probability that the first step leaves it as it is. */
    final double staysFirst;

    private final Ledger ledger;
    private final Calendar calendar;
    /** Null for the sound course. */
    private final Fault fault;
    private final Effects effects;
    private final double severity;
    private final double rate;
    /** The same machine once it is mended; null for the sound course itself. */
    private final Course sound;
    /** Hazard of ageing in each step, and the sound machine's worth at the horizon: the same for all courses of one machine. */
    private final double[] ageing;
    private final double worthAtEnd;
    private final double[] ofFault;
    private final double[] ofAge;

    private Course(Ledger ledger, Fault fault, double severity, double rate, double[] ageing, double worthAtEnd, Course sound) {
        this.ledger = ledger;
        this.calendar = ledger.calendar;
        this.fault = fault;
        this.effects = fault == null ? Effects.NONE : ledger.model.effects(fault);
        this.severity = severity;
        this.rate = rate;
        this.sound = sound;
        mean = new double[calendar.steps + 1];
        square = new double[calendar.steps + 1];
        quit = new double[calendar.steps + 1];
        ofFault = new double[calendar.steps];
        ofAge = new double[calendar.steps];
        this.ageing = ageing;
        this.worthAtEnd = worthAtEnd;
        double value = fault == null ? worthAtEnd : ledger.value(worthAtEnd, fault, at(calendar.elapsed[calendar.steps]));
        mean[calendar.steps] = -value;
        square[calendar.steps] = value * value;
        parts[AFTERWARDS] = -value;
        fillChances();
        for (int k = calendar.steps - 1; k >= 0; k--) {
            step(k);
        }
        staysFirst = (1 - quit[1]) * (1 - foundAndDone(0));
    }

    /** A bill at each step, for a machine that stands still, before another goes on. */
    private Course(Ledger ledger, double[] bills, Course next) {
        this.ledger = ledger;
        calendar = ledger.calendar;
        fault = next.fault;
        effects = next.effects;
        severity = next.severity;
        rate = next.rate;
        sound = next.sound;
        quit = next.quit;
        ageing = next.ageing;
        worthAtEnd = next.worthAtEnd;
        ofFault = next.ofFault;
        ofAge = next.ofAge;
        staysFirst = 1;
        mean = new double[bills.length];
        square = new double[bills.length];
        for (int k = 0; k < bills.length; k++) {
            mean[k] = bills[k] + next.mean[k];
            square[k] = shifted(bills[k], 1, next.mean[k], next.square[k]);
        }
        System.arraycopy(next.parts, 0, parts, 0, PARTS);
        parts[BREAKDOWN] += bills[0];
    }

    /** A bill first, by the step in which it is paid, and then another course. */
    static Course after(Ledger ledger, double[] bills, Course next) {
        return new Course(ledger, bills, next);
    }

    /** A sound machine of an age. */
    static Course sound(Ledger ledger, double ageYears) {
        double end = ageYears + ledger.calendar.elapsed[ledger.calendar.steps];
        return new Course(ledger, null, 0, 0, ledger.ageing(ageYears), ledger.value(end), null);
    }

    /** A machine with a fault; {@code sound} is the same machine without. */
    static Course faulty(Ledger ledger, Fault fault, double severity, double rate, Course sound) {
        return new Course(ledger, fault, severity, rate, sound.ageing, sound.worthAtEnd, sound);
    }

    private double at(double seasons) {
        return Math.min(MOST_SEVERE, severity + rate * seasons);
    }

    /** Chances of quitting in a step, of the fault and of age: competing, so that each has its share of the whole. */
    private void fillChances() {
        double alive = 1;
        for (int k = 0; k < calendar.steps; k++) {
            double start = at(calendar.elapsed[k]);
            double growth = calendar.seasons[k] > 0 ? (at(calendar.elapsed[k + 1]) - start) / calendar.seasons[k] : 0;
            double failing = fault == null ? 0 : QuittingHazard.ofFault(fault, start, growth, calendar.seasons[k]);
            double age = ageing[k];
            double chance = QuittingHazard.share(failing + age);
            ofFault[k] = failing > 0 ? chance * failing / (failing + age) : 0;
            ofAge[k] = chance - ofFault[k];
            alive *= 1 - chance;
            quit[k + 1] = 1 - alive;
        }
    }

    private void step(int k) {
        double now = calendar.perHalfStep;
        double later = calendar.perStep;
        double running = now * ledger.running(k, effects, at((calendar.elapsed[k] + calendar.elapsed[k + 1]) / 2));
        double found = foundAndDone(k);
        double stays = (1 - ofFault[k] - ofAge[k]) * (1 - found);
        mean[k] = running + stays * later * mean[k + 1];
        square[k] = stays * shifted(running, later, mean[k + 1], square[k + 1]);
        for (int part = 0; part < PARTS; part++) {
            parts[part] *= stays * later;
        }
        parts[ENERGY] += running;
        leave(k, running, ofAge[k], now * ledger.death(k), later * ledger.renewed[k + 1], BREAKDOWN);
        if (fault != null) {
            double mended = later * (fault.isSealed() ? ledger.renewed[k + 1] : sound.mean[k + 1]);
            leave(k, running, ofFault[k], now * ledger.breakdown(k, fault), mended, BREAKDOWN);
            leave(k, running, (1 - ofFault[k] - ofAge[k]) * found, later * ledger.remedied(k + 1, fault), mended, LATER_WORK);
        }
    }

    /** One way in which the course ends in a step: a bill, and what goes on after it. */
    private void leave(int k, double running, double chance, double bill, double after, int part) {
        mean[k] += chance * (bill + after);
        square[k] += chance * (running + bill + after) * (running + bill + after);
        parts[part] += chance * bill;
        parts[AFTERWARDS] += chance * after;
    }

    /** Mean square of a fixed amount and a later one. */
    private static double shifted(double fixed, double later, double mean, double square) {
        return fixed * fixed + 2 * fixed * later * mean + later * later * square;
    }

    /** Chance that the fault is found at the end of a step and worth its remedy then. */
    private double foundAndDone(int k) {
        if (fault == null || ledger.found[k] == 0) {
            return 0;
        }
        double next = fault.isSealed() ? ledger.renewed[k + 1] : sound.mean[k + 1];
        return ledger.remedied(k + 1, fault) + next < mean[k + 1] ? ledger.found[k] : 0;
    }
}
