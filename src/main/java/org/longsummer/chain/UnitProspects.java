package org.longsummer.chain;

import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.departure.Hemisphere;
import org.longsummer.chain.outlook.Standing;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.weighing.Circumstances;
import org.longsummer.quantity.Power;

/** What lies ahead of one unit and what is worth doing, verdict by verdict in order of time; made by {@link FleetProspects}. */
public final class UnitProspects {
    private final FleetProspects fleet;
    private final Unit unit;
    private final Power soundDraw;
    private Hemisphere hemisphere = Hemisphere.UNSEEN;
    private Machine machine;

    UnitProspects(FleetProspects fleet, Unit unit) {
        this.fleet = fleet;
        this.unit = unit;
        this.soundDraw = Circumstances.soundDraw(unit.plate());
        this.machine = Machine.of(unit);
    }

    /** After the next verdict of the unit. */
    public Prospect after(Verdict verdict) {
        machine = machine.at(verdict);
        hemisphere = hemisphere.seen(verdict.visit());
        FleetProspects.Ahead ahead = fleet.at(unit.altitude(), hemisphere.clock(unit));
        Standing standing = Standing.after(verdict, machine.judgedVisits(), machine.installedOn());
        Prospect prospect = new Prospect(verdict, standing, ahead.outlooker().limit(standing),
                ahead.weigher().map(weigher -> weigher.advise(Circumstances.of(standing, soundDraw))));
        machine = machine.after(verdict);
        return prospect;
    }
}
