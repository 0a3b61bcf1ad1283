package org.longsummer.chain;

import java.time.LocalDate;
import java.util.Optional;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.departure.Hemisphere;
import org.longsummer.chain.outlook.Standing;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.Circumstances;
import org.longsummer.quantity.Power;

/** What lies ahead of one unit and what is worth doing, verdict by verdict in order of time; made by {@link FleetProspects}. */
public final class UnitProspects {
    private final FleetProspects fleet;
    private final Unit unit;
    private final Power soundDraw;
    private Hemisphere hemisphere = Hemisphere.UNSEEN;
    private Optional<LocalDate> installedOn;
    private int judgedVisits;

    UnitProspects(FleetProspects fleet, Unit unit) {
        this.fleet = fleet;
        this.unit = unit;
        this.soundDraw = Circumstances.soundDraw(unit.plate());
        this.installedOn = unit.installedOn();
    }

    /** After the next verdict of the unit. */
    public Prospect after(Verdict verdict) {
        judgedVisits += verdict.state() == State.RETAKE ? 0 : 1;
        hemisphere = hemisphere.seen(verdict.visit());
        FleetProspects.Ahead ahead = fleet.at(unit.altitude(), hemisphere.clock(unit));
        Standing standing = Standing.after(verdict, judgedVisits, installedOn);
        Prospect prospect = new Prospect(verdict, standing, ahead.outlooker().limit(standing),
                ahead.weigher().map(weigher -> weigher.advise(Circumstances.of(standing, soundDraw))));
        if (verdict.visit().workDone().contains(Work.UNIT_REPLACED)) {
            installedOn = Optional.of(verdict.visit().localDay());
            judgedVisits = 0;
        }
        return prospect;
    }
}
