package org.longsummer.chain.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.longsummer.chain.condition.Hypothesis;
import org.longsummer.chain.outlook.Outlook.Basis;
import org.longsummer.chain.outlook.Outlook.Limit;
import org.longsummer.chain.outlook.Outlook.Quitting;
import org.longsummer.chain.season.SeasonClock;

/**
 * Looks ahead: the limit date by first passage of the faults that the history leaves possible, the chance of quitting from age and
 * condition. A fault's growth extrapolates; a compressor's death does not, so it gets a chance and never a date.
 */
public final class Outlooker {
    /** How far dates are given, in seasons of running: beyond it a rate says more about the assumptions than about the unit. Ours. */
    public static final double HORIZON_SEASONS = 1.5;
    /**
     * A date is given from this chance on that the fault of now reaches the limit by the horizon. Ours: one in five is worth a line in a
     * plan; on a simulated fleet three in two hundred visits of sound units then had a date within half a year.
     */
    public static final double CHANCE_FOR_A_DATE = 0.20;
    private static final int FAN_STEP_DAYS = 15;

    private final LifeCurve life;
    private final SeasonClock clock;
    private final FaultModel model;
    private final FirstPassage.Ahead ahead;
    private final NewFaults newFaults;

    public Outlooker(FaultModel model, LifeCurve life, SeasonClock clock) {
        this.model = model;
        this.life = life;
        this.clock = clock;
        this.ahead = new FirstPassage.Ahead(model, HORIZON_SEASONS);
        this.newFaults = new NewFaults(model);
    }

    public Outlook outlook(Standing standing) {
        return new Outlook(standing, limit(standing), quitting(standing));
    }

    /** The limit date; without a history it says nothing, since the curve of a class is not a forecast of a unit. */
    public Limit limit(Standing standing) {
        LocalDate horizon = clock.dateAfter(standing.on(), HORIZON_SEASONS);
        if (standing.notCooling()) {
            Optional<LocalDate> today = Optional.of(standing.on());
            return new Limit(today, today, today, 1, 1, 1, horizon);
        }
        if (!standing.hasHistory()) {
            return new Limit(Optional.empty(), Optional.empty(), Optional.empty(), 0, 0, 0, horizon);
        }
        FirstPassage passage = ahead.of(standing.hypotheses());
        return new Limit(date(standing, passage, 0.1), date(standing, passage, 0.5), date(standing, passage, 0.9), passage.already(),
                passage.ofPresentFault(), passage.withinHorizon(), horizon);
    }

    private Optional<LocalDate> date(Standing standing, FirstPassage passage, double share) {
        if (passage.ofPresentFault() < CHANCE_FOR_A_DATE) {
            return Optional.empty();
        }
        OptionalDouble seasons = passage.seasonsUntil(share);
        return seasons.isPresent() ? Optional.of(clock.dateAfter(standing.on(), seasons.getAsDouble())) : Optional.empty();
    }

    /** The chance of quitting; from age alone, and said so, where there is no history. */
    public Quitting quitting(Standing standing) {
        LocalDate on = standing.on();
        LocalDate end = clock.seasonEnd(on);
        if (standing.notCooling()) {
            return new Quitting(1, 1, 1, end, Basis.NOT_COOLING);
        }
        double thirtyDays = clock.seasonsBetween(on, on.plusDays(30));
        double toEnd = clock.seasonsBetween(on, end.plusDays(1));
        double toNextEnd = clock.seasonsBetween(on, clock.seasonEnd(clock.nextOpening(end)).plusDays(1));
        double byEnd = chance(standing, toEnd);
        double byNextEnd = chance(standing, toNextEnd);
        double inNext = byEnd < 1 ? (byNextEnd - byEnd) / (1 - byEnd) : 1;
        Basis basis = standing.hasHistory() ? Basis.HISTORY : standing.ageYears().isPresent() ? Basis.AGE_ONLY : Basis.LIFE_CURVE_ONLY;
        return new Quitting(chance(standing, thirtyDays), byEnd, inNext, end, basis);
    }

    private double chance(Standing standing, double seasons) {
        double age = standing.age(life);
        if (!standing.hasHistory()) {
            return QuittingHazard.share(QuittingHazard.ofAge(life, age, seasons));
        }
        double ageing = QuittingHazard.withoutSign(life, age, seasons);
        double sum = 0;
        for (Hypothesis hypothesis : standing.hypotheses()) {
            double fault = hypothesis.isSound() ? newFaults.within(seasons)
                    : QuittingHazard.ofFault(hypothesis.fault().get(), hypothesis.severity(), hypothesis.ratePerSeason(), seasons);
            sum += hypothesis.weight() * QuittingHazard.share(ageing + fault);
        }
        return sum;
    }

    /** The fan for the chart, every 15 days of the season from today to the horizon; winter has no points of its own. */
    public Outlook.Fan fan(Standing standing) {
        List<Outlook.FanPoint> points = new ArrayList<>();
        if (standing.hasHistory() && !standing.notCooling()) {
            FanSpread spread = new FanSpread(model, standing.hypotheses());
            LocalDate horizon = clock.dateAfter(standing.on(), HORIZON_SEASONS);
            for (LocalDate day = standing.on(); !day.isAfter(horizon); day = day.plusDays(FAN_STEP_DAYS)) {
                if (points.isEmpty() || clock.isOpen(day)) {
                    points.add(spread.on(day, clock.seasonsBetween(standing.on(), day)));
                }
            }
        }
        return new Outlook.Fan(points);
    }
}
