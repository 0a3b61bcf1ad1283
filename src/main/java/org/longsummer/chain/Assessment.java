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
import org.longsummer.chain.condition.History;
import org.longsummer.chain.condition.Judged;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closer;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Lesson;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

/** The whole chain, from visits to verdicts. */
public final class Assessment {
    private static final Comparator<Visit> IN_ORDER = Comparator.comparing(Visit::at).thenComparing(Visit::id);

    private Assessment() {}

    /**
     * Judges all the visits of one unit, each from the ones before it and from the last closing before its own day.
     *
     * @param visits of this unit, in any order; withdrawn and corrected ones left out
     * @return one verdict a visit, in order of time
     */
    public static List<Verdict> ofUnit(Unit unit, List<Visit> visits, Closings closings) {
        return replay(unit, visits, closings).stream().map(Judged::verdict).toList();
    }

    /** Like {@link #ofUnit}, with what each visit teaches across units. */
    public static List<Judged> replay(Unit unit, List<Visit> visits, Closings closings) {
        History history = new History(unit, true);
        List<Visit> ordered = new ArrayList<>(visits);
        ordered.sort(IN_ORDER);
        List<Judged> all = new ArrayList<>(ordered.size());
        for (List<Visit> moment : Moments.of(ordered)) {
            all.addAll(Moments.judge(history, moment, closings));
        }
        return all;
    }

    /**
     * Judges a whole fleet day by day, closing each day behind it. The order of the rows does not matter.
     *
     * @param units by their identifiers
     * @param verdicts gets every verdict, in order of days, then units, then time
     */
    public static Closings ofFleet(Map<String, Unit> units, Collection<Visit> visits, Consumer<Verdict> verdicts) {
        TreeMap<LocalDate, List<Visit>> days = new TreeMap<>();
        for (Visit visit : visits) {
            days.computeIfAbsent(visit.utcDay(), day -> new ArrayList<>()).add(visit);
        }
        Closings closings = new Closings();
        Map<String, History> histories = new LinkedHashMap<>();
        for (Map.Entry<LocalDate, List<Visit>> day : days.entrySet()) {
            List<Lesson> lessons = new ArrayList<>();
            day.getValue().sort(Comparator.comparing(Visit::unitId).thenComparing(IN_ORDER));
            for (List<Visit> moment : Moments.of(day.getValue())) {
                History history = histories.computeIfAbsent(moment.get(0).unitId(), id -> new History(units.get(id), false));
                for (Judged judged : Moments.judge(history, moment, closings)) {
                    lessons.add(judged.lesson());
                    verdicts.accept(judged.verdict());
                }
            }
            closings.add(day.getKey(), Closer.close(closings, day.getKey(), lessons));
        }
        return closings;
    }
}
