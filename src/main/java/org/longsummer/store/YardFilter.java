package org.longsummer.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.longsummer.access.Reach;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;
import org.longsummer.store.FleetUnit.Duty;

/**
 * Which units of the yard to list.
 *
 * @param reach only units that somebody who sees so far may see
 * @param duties only units that are looked after like this; either in service, or one or both of the others
 * @param criteria all of them hold
 */
public record YardFilter(Reach reach, Set<Duty> duties, List<YardCriterion> criteria) {
    private static final Set<Duty> IN_SERVICE = Set.of(Duty.IN_SERVICE);

    /** All units in service. */
    public static final YardFilter ALL = new YardFilter(Reach.EVERYWHERE, IN_SERVICE, List.of());

    public YardFilter {
        duties = Set.copyOf(duties);
        criteria = List.copyOf(criteria);
        if (duties.isEmpty() || duties.contains(Duty.IN_SERVICE) && duties.size() > 1) {
            throw new IllegalArgumentException("duties: " + duties + " given; give in service, or one or both of the others");
        }
    }

    /** Only what somebody may see, whatever else is asked for. */
    public YardFilter within(Reach limit) {
        return new YardFilter(reach.within(limit), duties, criteria);
    }

    /** Narrowed by one thing more. */
    public YardFilter and(YardCriterion criterion) {
        List<YardCriterion> more = new ArrayList<>(criteria);
        more.add(criterion);
        return new YardFilter(reach, duties, more);
    }

    /** Units that are looked after like this, instead of those in service. */
    public YardFilter of(Duty duty) {
        return new YardFilter(reach, EnumSet.of(duty), criteria);
    }

    /** Units laid up or sold, instead of those in service. */
    public YardFilter outOfServiceInstead() {
        return new YardFilter(reach, EnumSet.of(Duty.OUT_OF_SERVICE, Duty.SOLD), criteria);
    }

    public YardFilter inDepot(String name) {
        return and(new YardCriterion.AtDepot(name));
    }

    public YardFilter inState(State wanted) {
        return and(new YardCriterion.InState(wanted));
    }

    public YardFilter onlyNeverJudged() {
        return and(new YardCriterion.NeverJudged());
    }

    public YardFilter withCondition(Condition wanted) {
        return and(new YardCriterion.Likely(wanted));
    }

    public YardFilter notVisitedSince(Instant moment) {
        return and(new YardCriterion.NotVisitedSince(moment));
    }

    public YardFilter containing(String wanted) {
        return wanted.isBlank() ? this : and(new YardCriterion.Containing(wanted));
    }

    public YardFilter dueBefore(LocalDate day) {
        return and(new YardCriterion.DueBefore(day));
    }
}
