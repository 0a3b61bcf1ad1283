package org.longsummer.chain;

import java.time.LocalDate;
import java.util.Optional;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.outlook.Outlooker;
import org.longsummer.chain.outlook.Standing;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.Circumstances;
import org.longsummer.chain.weighing.Weigher;
import org.longsummer.quantity.Power;

/** What lies ahead of one unit and what is worth doing, verdict by verdict in order of time; made by {@link FleetProspects}. */
public final class UnitProspects {
    private final Outlooker outlooker;
    private final Optional<Weigher> weigher;
    private final Power soundDraw;
    private Optional<LocalDate> installedOn;
    private int judgedVisits;

    UnitProspects(Unit unit, Outlooker outlooker, Optional<Weigher> weigher) {
        this.outlooker = outlooker;
        this.weigher = weigher;
        this.soundDraw = Circumstances.soundDraw(unit.plate());
        this.installedOn = unit.installedOn();
    }

    /** After the next verdict of the unit. */
    public Prospect after(Verdict verdict) {
        judgedVisits += verdict.state() == State.RETAKE ? 0 : 1;
        Standing standing = Standing.after(verdict, judgedVisits, installedOn);
        Prospect prospect = new Prospect(verdict, standing, outlooker.limit(standing),
                weigher.map(w -> w.advise(Circumstances.of(standing, soundDraw))));
        if (verdict.visit().workDone().contains(Work.UNIT_REPLACED)) {
            installedOn = Optional.of(verdict.visit().localDay());
            judgedVisits = 0;
        }
        return prospect;
    }
}
