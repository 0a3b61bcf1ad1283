package org.longsummer.chain;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.outlook.FaultModel;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.outlook.Outlook;
import org.longsummer.chain.outlook.OutlookWording;
import org.longsummer.chain.outlook.Outlooker;
import org.longsummer.chain.outlook.Standing;
import org.longsummer.chain.outlook.TypicalWeather;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.Advice;
import org.longsummer.chain.weighing.Circumstances;
import org.longsummer.chain.weighing.Flip;
import org.longsummer.chain.weighing.Flipper;
import org.longsummer.chain.weighing.PlannedSaving;
import org.longsummer.chain.weighing.PriceList;
import org.longsummer.chain.weighing.Quote;
import org.longsummer.chain.weighing.Weigher;
import org.longsummer.chain.weighing.Weighing;
import org.longsummer.quantity.Money;

/** What lies ahead of one unit on a day, and what is worth doing about it: everything its page, its weighing and its sheet say. */
public final class UnitAhead {
    private final Standing seen;
    private final Standing standing;
    private final LifeCurve life;
    private final Assumed assumed;
    private final Weigher weigher;
    private final Circumstances circumstances;
    private final boolean workUnread;

    private UnitAhead(Unit unit, Standing seen, boolean workUnread, LocalDate today, Assumed assumed) {
        FaultModel faults = assumed.faults;
        this.seen = seen;
        this.workUnread = workUnread;
        this.standing = seen.later(today, assumed.clock, faults);
        this.life = assumed.life;
        this.assumed = assumed;
        this.weigher = new Weigher(faults, life, assumed.clock, assumed.prices);
        this.circumstances = new Circumstances(standing, Circumstances.soundDraw(unit.plate()), assumed.warrantyUntil, assumed.quote,
                assumed.somebodyOnSite);
    }

    /**
     * What is taken for granted.
     *
     * @param prices what work, energy and nights cost
     * @param clock when units run
     * @param warrantyUntil last day of the maker's warranty, where there is one
     * @param quote a price in hand
     * @param somebodyOnSite no call-out is paid
     * @param life how long such units live
     * @param faults how faults come and grow at the depot, as {@link TypicalWeather} makes it of its altitude: costly, so ask once for many units
     */
    public record Assumed(PriceList prices, SeasonClock clock, Optional<LocalDate> warrantyUntil, Optional<Quote> quote,
            boolean somebodyOnSite, LifeCurve life, FaultModel faults) {}

    /**
     * Of a unit with its verdicts.
     *
     * @param verdicts in order of time
     * @param today the day on which one looks ahead
     */
    public static UnitAhead of(Unit unit, List<Verdict> verdicts, LocalDate today, Assumed assumed) {
        boolean workUnread = !verdicts.isEmpty() && !verdicts.get(verdicts.size() - 1).visit().workDone().isEmpty();
        return new UnitAhead(unit, standing(unit, verdicts, today), workUnread, today, assumed);
    }

    private static Standing standing(Unit unit, List<Verdict> verdicts, LocalDate today) {
        if (verdicts.isEmpty()) {
            OptionalDouble age = unit.installedOn().map(day -> OptionalDouble.of(Math.max(0, ChronoUnit.DAYS.between(day, today) / 365.25)))
                    .orElse(OptionalDouble.empty());
            return new Standing(today, List.of(), 0, age, false);
        }
        Machine machine = Machine.of(unit);
        for (Verdict earlier : verdicts.subList(0, verdicts.size() - 1)) {
            machine = machine.at(earlier).after(earlier);
        }
        Verdict last = verdicts.get(verdicts.size() - 1);
        machine = machine.at(last);
        return Standing.afterItsWork(last, machine.judgedVisits(), machine.installedOn());
    }

    /** What was known after the last visit and its work. */
    public Standing seen() {
        return seen;
    }

    /** What is known on the day. */
    public Standing standing() {
        return standing;
    }

    public LifeCurve life() {
        return life;
    }

    public PriceList prices() {
        return weigher.prices();
    }

    /** When it falls below what an owner can accept, in words; work that no reading has followed is said to be taken at its word. */
    public String limitInWords(Function<LocalDate, String> date) {
        return (workUnread ? OutlookWording.workTaken(seen.on(), date) + " " : "") + OutlookWording.limit(outlook(), date);
    }

    public Outlook outlook() {
        return outlooker().outlook(standing);
    }

    /** From the last visit on, for a chart on which that visit is the last point. */
    public Outlook.Fan fan() {
        return outlooker().fan(seen);
    }

    private Outlooker outlooker() {
        return new Outlooker(assumed.faults, life, assumed.clock);
    }

    public Weighing weighing() {
        return weigher.weigh(circumstances);
    }

    /** The advice alone. */
    public Advice advice() {
        return weigher.advise(circumstances);
    }

    /** What planned works cost and save, at a price of their own or at the list's. */
    public PlannedSaving planned(List<Work> works, Optional<Money> agreed) {
        return weigher.planned(circumstances, works, agreed);
    }

    /** Where the advice changes when one figure moves. */
    public List<Flip> flips() {
        return Flipper.flips(weigher, circumstances);
    }
}
