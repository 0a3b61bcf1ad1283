package org.longsummer.chain;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.longsummer.chain.condition.History;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closer;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Lesson;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

/**
 * The whole chain, from visits to verdicts: visit, screened, expectation, departure, history, condition.
 *
 * <p>First what a fleet teaches is learned day by day ({@link #learn}); then each unit is judged by itself, from its own visits and
 * the closings ({@link #ofUnit}), here or on a phone.
 */
public final class Assessment {
    /** The order in which visits are taken: by time, then by identifier. */
    public static final Comparator<Visit> IN_ORDER = Comparator.comparing(Visit::at).thenComparing(Visit::id);

    private Assessment() {}

    /**
     * Judges all the visits of one unit, each from the ones before it and from the last closing before its own day, with reasons.
     *
     * @param visits of this unit, in any order; withdrawn and corrected ones left out
     * @return one verdict a visit, in order of time
     */
    public static List<Verdict> ofUnit(Unit unit, List<Visit> visits, Closings closings) {
        return judge(new History(unit, true), visits, closings);
    }

    /** Like {@link #ofUnit}, but only the verdicts of some visits give reasons, the lines of the budgets and the next best reading. */
    public static List<Verdict> explaining(Unit unit, List<Visit> visits, Closings closings, Predicate<Visit> explained) {
        return judge(new History(unit, explained), visits, closings);
    }

    /** Like {@link #ofUnit}, without the reasons, the lines of the budgets and the next best reading: several times quicker, for long lists. */
    public static List<Verdict> briefly(Unit unit, List<Visit> visits, Closings closings) {
        return judge(new History(unit, false), visits, closings);
    }

    private static List<Verdict> judge(History history, List<Visit> visits, Closings closings) {
        List<Visit> ordered = new ArrayList<>(visits);
        ordered.sort(IN_ORDER);
        List<Verdict> all = new ArrayList<>(ordered.size());
        for (List<Visit> moment : Moments.of(ordered)) {
            all.addAll(Moments.judge(history, moment, closings));
        }
        return all;
    }

    /**
     * Learns across units day by day, closing each behind it. The order of the rows does not matter.
     *
     * @param units by their identifiers
     */
    public static Closings learn(Map<String, Unit> units, Collection<Visit> visits) {
        TreeMap<LocalDate, TreeMap<String, List<Visit>>> days = new TreeMap<>();
        for (Visit visit : visits) {
            days.computeIfAbsent(visit.utcDay(), day -> new TreeMap<>()).computeIfAbsent(visit.unitId(), id -> new ArrayList<>()).add(visit);
        }
        Closings closings = new Closings();
        Map<String, UnitLessons> histories = new LinkedHashMap<>();
        days.forEach((day, byUnit) -> {
            List<Lesson> lessons = new ArrayList<>();
            byUnit.forEach((unitId, ofUnit) -> {
                ofUnit.sort(IN_ORDER);
                lessons.addAll(histories.computeIfAbsent(unitId, id -> new UnitLessons(units.get(id))).learn(ofUnit, closings));
            });
            closings.add(day, Closer.close(closings, day, lessons));
        });
        return closings;
    }

    /**
     * Judges a whole fleet.
     *
     * @param units by their identifiers
     * @param verdicts gets every verdict, unit by unit in order of identifiers, each in order of time
     */
    public static void ofFleet(Map<String, Unit> units, Collection<Visit> visits, Consumer<Verdict> verdicts) {
        Closings closings = learn(units, visits);
        TreeMap<String, List<Visit>> byUnit = new TreeMap<>();
        for (Visit visit : visits) {
            byUnit.computeIfAbsent(visit.unitId(), id -> new ArrayList<>()).add(visit);
        }
        byUnit.forEach((unitId, ofUnit) -> briefly(units.get(unitId), ofUnit, closings).forEach(verdicts));
    }
}
