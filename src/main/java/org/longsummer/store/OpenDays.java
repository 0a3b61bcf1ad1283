package org.longsummer.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.longsummer.chain.UnitLessons;
import org.longsummer.chain.learning.Closer;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Learned;
import org.longsummer.chain.learning.Lesson;
import org.longsummer.chain.visit.Visit;

/**
 * Closes the UTC days that are over: learns across units from their visits, day by day.
 *
 * <p>A unit whose visits come in order goes on where it was; one that does not, or that was not seen for long, is replayed.
 */
final class OpenDays {
    /** A unit takes about 2 kB; a larger fleet is replayed more instead of taking more memory. */
    private static final int REPLAYS_KEPT = 40_000;

    private final Handle handle;
    private final LearnedLevels.Closed closed;
    private final Map<String, UnitLessons> replays = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, UnitLessons> eldest) {
            return size() > REPLAYS_KEPT;
        }
    };

    private OpenDays(Handle handle, LearnedLevels.Closed closed) {
        this.handle = handle;
        this.closed = closed;
    }

    /**
     * Closes all days before one that are still open.
     *
     * @param closed what was closed before; its closings go on
     */
    static LearnedLevels.Closed closeBefore(Handle handle, LocalDate today, LearnedLevels.Closed closed) {
        OpenDays open = new OpenDays(handle, closed);
        Visits.daysToClose(handle, closed.through(), today, closed.generation()).forEach(open::close);
        LocalDate yesterday = today.minusDays(1);
        Settings.write(handle, Settings.CLOSED_THROUGH, yesterday.toString());
        return new LearnedLevels.Closed(closed.generation(), Optional.of(yesterday), closed.closings());
    }

    private void close(LocalDate day) {
        Map<String, List<Visit>> byUnit = new TreeMap<>();
        Visits.closingOn(handle, day, closed.generation())
                .forEach(visit -> byUnit.computeIfAbsent(visit.unitId(), id -> new ArrayList<>()).add(visit));
        List<Lesson> lessons = new ArrayList<>();
        byUnit.forEach((unitId, visits) -> lessons.addAll(lessons(unitId, visits)));
        Closings closings = closed.closings();
        List<Learned> changes = Closer.close(closings, day, lessons);
        LearnedLevels.append(handle, closed.generation(), day, changes);
        closings.add(day, changes);
    }

    private List<Lesson> lessons(String unitId, List<Visit> visits) {
        UnitLessons kept = replays.get(unitId);
        boolean goesOn = kept != null && kept.canGoOnWith(visits.get(0));
        UnitLessons replay = goesOn ? kept : new UnitLessons(Units.find(handle, unitId).orElseThrow().unit());
        replays.put(unitId, replay);
        List<Visit> needed = goesOn ? visits : Visits.current(handle, unitId).stream()
                .filter(visit -> !visit.at().isAfter(visits.get(visits.size() - 1).at())).toList();
        Set<String> ids = visits.stream().map(Visit::id).collect(Collectors.toSet());
        return replay.learn(needed, closed.closings()).stream().filter(lesson -> ids.contains(lesson.visitId())).toList();
    }
}
