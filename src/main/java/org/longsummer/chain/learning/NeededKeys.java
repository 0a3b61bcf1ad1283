package org.longsummer.chain.learning;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

/** The keys of what was learned that judging some units reads, their next visits included. */
public final class NeededKeys implements Predicate<String> {
    private static final int MONTHS = 12;

    private final Set<String> keys = new TreeSet<>(List.of(ClassLevel.ALL, FleetSlopes.KEY));
    private final int firstYear;

    /** @param from a day from which on any technician may come */
    public NeededKeys(LocalDate from) {
        firstYear = from.getYear();
    }

    public void add(Unit unit, List<Visit> visits) {
        keys.add(ClassLevel.key(unit));
        for (int month = 1; month <= MONTHS; month++) {
            keys.add(SiteMoisture.key(unit.site(), month));
        }
        visits.forEach(visit -> keys.add(TechnicianOffset.key(visit)));
    }

    @Override
    public boolean test(String key) {
        return keys.contains(key) || TechnicianOffset.isOfYearFrom(key, firstYear);
    }
}
