package org.longsummer.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.longsummer.chain.UnitLessons;
import org.longsummer.chain.learning.Closer;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Learned;
import org.longsummer.chain.learning.Lesson;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

/**
 * Closes the UTC days that are over: learns across units from their visits, day by day.
 *
 * <p>A unit whose visits come in order goes on where it was; one that does not, or that was not seen for long, is replayed.
 */
final class OpenDays {
    /** A unit takes about 2 kB; a fleet too large for a third of the memory is replayed more instead. */
    private static final long REPLAYS_KEPT = Runtime.getRuntime().maxMemory() / 3 / 2_048;
    /** Units learned from by one thread at a time: fewer are not worth handing over. */
    private static final int UNITS_AT_ONCE = 64;
    private static final int UNITS_FOUND_AT_ONCE = 500;

    private final Handle handle;
    private final LearnedLevels.Closed closed;
    private final Map<String, UnitLessons> replays = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, UnitLessons> eldest) {
            boolean tooMany = size() > REPLAYS_KEPT;
            allKept &= !tooMany;
            return tooMany;
        }
    };

    private final Workers workers;
    /** Every visit before the day that is being closed was taken in by one of the replays. */
    private boolean allKept;

    private OpenDays(Handle handle, LearnedLevels.Closed closed, Workers workers) {
        this.handle = handle;
        this.closed = closed;
        this.workers = workers;
        this.allKept = closed.through().isEmpty();
    }

    /**
     * Closes all days before one that are still open.
     *
     * @param closed what was closed before; its closings go on
     */
    static LearnedLevels.Closed closeBefore(Handle handle, LocalDate today, LearnedLevels.Closed closed) {
        try (Workers workers = new Workers()) {
            OpenDays open = new OpenDays(handle, closed, workers);
            Visits.daysToClose(handle, closed.through(), today, closed.generation()).forEach(open::close);
        }
        LocalDate yesterday = today.minusDays(1);
        Settings.write(handle, Settings.CLOSED_THROUGH, yesterday.toString());
        return new LearnedLevels.Closed(closed.generation(), Optional.of(yesterday), closed.closings());
    }

    private void close(LocalDate day) {
        Map<String, List<Visit>> byUnit = new TreeMap<>();
        Visits.closingOn(handle, day, closed.generation())
                .forEach(visit -> byUnit.computeIfAbsent(visit.unitId(), id -> new ArrayList<>()).add(visit));
        List<Lesson> lessons = new ArrayList<>();
        learnings(byUnit).forEach(part -> lessons.addAll(Workers.result(part)));
        Closings closings = closed.closings();
        List<Learned> changes = Closer.close(closings, day, lessons);
        LearnedLevels.append(handle, closed.generation(), day, changes);
        closings.add(day, changes);
    }

    /** What one unit's visits of a day teach, ready to be learned by another thread. */
    private record Part(UnitLessons replay, List<Visit> needed, Set<String> ids, Closings closings) {
        List<Lesson> lessons() {
            return replay.learn(needed, closings).stream().filter(lesson -> ids.contains(lesson.visitId())).toList();
        }
    }

    private List<Future<List<Lesson>>> learnings(Map<String, List<Visit>> byUnit) {
        Map<String, Unit> units = unitsToBegin(byUnit.keySet());
        List<Future<List<Lesson>>> begun = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        byUnit.forEach((unitId, visits) -> {
            parts.add(part(unitId, visits, units));
            if (parts.size() == UNITS_AT_ONCE) {
                begun.add(begin(parts));
            }
        });
        begun.add(begin(parts));
        return begun;
    }

    private Future<List<Lesson>> begin(List<Part> parts) {
        List<Part> some = List.copyOf(parts);
        parts.clear();
        return workers.begin(() -> some.stream().flatMap(part -> part.lessons().stream()).toList());
    }

    /** The units of a day whose replay is not kept. */
    private Map<String, Unit> unitsToBegin(Set<String> unitIds) {
        List<String> missing = unitIds.stream().filter(unitId -> !replays.containsKey(unitId)).toList();
        Map<String, Unit> units = new HashMap<>();
        for (List<String> some : Parts.of(missing, UNITS_FOUND_AT_ONCE)) {
            Units.among(handle, some).forEach(unit -> units.put(unit.id(), unit.unit()));
        }
        return units;
    }

    private Part part(String unitId, List<Visit> visits, Map<String, Unit> units) {
        UnitLessons kept = replays.get(unitId);
        boolean goesOn = kept != null && kept.canGoOnWith(visits.get(0));
        UnitLessons replay = goesOn ? kept : new UnitLessons(unit(unitId, units));
        replays.put(unitId, replay);
        List<Visit> needed = goesOn || kept == null && allKept ? visits : Visits.current(handle, unitId).stream()
                .filter(visit -> !visit.at().isAfter(visits.get(visits.size() - 1).at())).toList();
        return new Part(replay, needed, visits.stream().map(Visit::id).collect(Collectors.toSet()), closed.closings());
    }

    private Unit unit(String unitId, Map<String, Unit> units) {
        Unit found = units.get(unitId);
        return found != null ? found : Units.find(handle, unitId).orElseThrow().unit();
    }
}
