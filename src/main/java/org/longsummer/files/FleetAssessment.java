package org.longsummer.files;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.FleetProspects;
import org.longsummer.chain.UnitLessons;
import org.longsummer.chain.UnitProspects;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closer;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Lesson;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.store.Workers;

/**
 * Judges a fleet of any size on all processors: what {@link Assessment} says, in little memory. First what the fleet teaches is learned
 * day by day, the units of one day side by side; then the units are judged side by side, each from its own visits and the closings.
 * What is written does not depend on who was quicker.
 */
final class FleetAssessment implements AutoCloseable {
    /** Units of one day taken by one worker at a time: fewer are not worth handing over. */
    private static final int UNITS_AT_ONCE = 64;
    /** Visits judged by one worker at a time, give or take one unit's. */
    private static final int VISITS_AT_ONCE = 512;
    private static final int AHEAD = 4;

    private final List<Unit> units;
    private final PackedVisits visits;
    private final int[] rows;
    private final Workers workers;
    private final Progress progress;

    /**
     * @param units in order of identifiers; a visit's unit is its place here
     * @param workerCount how many work at once
     */
    FleetAssessment(List<Unit> units, PackedVisits visits, int workerCount, Progress progress) {
        this.units = units;
        this.visits = visits;
        this.rows = visits.byUnit(units.size());
        this.progress = progress;
        this.workers = new Workers(workerCount);
    }

    /** Makes what lies ahead of units, for one worker at a time. */
    interface Ahead extends Supplier<FleetProspects> {}

    /** Learns across units day by day, closing each behind it. */
    Closings learn() {
        Closings closings = new Closings();
        UnitLessons[] lessons = new UnitLessons[units.size()];
        int[] ordered = visits.byDay(rows);
        for (int from = 0; from < ordered.length;) {
            int to = from + 1;
            while (to < ordered.length && visits.day(ordered[to]).equals(visits.day(ordered[from]))) {
                to++;
            }
            closings.add(visits.day(ordered[from]), Closer.close(closings, visits.day(ordered[from]),
                    lessonsOfDay(ordered, from, to, lessons, closings)));
            progress.steps("visits learned from", to - from);
            from = to;
        }
        return closings;
    }

    private List<Lesson> lessonsOfDay(int[] ordered, int from, int to, UnitLessons[] lessons, Closings closings) {
        List<Future<List<Lesson>>> parts = new ArrayList<>();
        for (int start = from; start < to;) {
            int begin = start;
            int end = endOfUnit(ordered, Math.min(to, start + UNITS_AT_ONCE), to);
            if (begin == from && end == to) {
                return lessonsOf(ordered, from, to, lessons, closings);
            }
            parts.add(workers.begin(() -> lessonsOf(ordered, begin, end, lessons, closings)));
            start = end;
        }
        List<Lesson> all = new ArrayList<>(to - from);
        for (Future<List<Lesson>> part : parts) {
            all.addAll(Workers.result(part));
        }
        return all;
    }

    private List<Lesson> lessonsOf(int[] ordered, int from, int to, UnitLessons[] lessons, Closings closings) {
        List<Lesson> all = new ArrayList<>(to - from);
        for (int start = from; start < to;) {
            int end = endOfUnit(ordered, start + 1, to);
            int unit = visits.unit(ordered[start]);
            if (lessons[unit] == null) {
                lessons[unit] = new UnitLessons(units.get(unit));
            }
            all.addAll(lessons[unit].learn(visitsOf(ordered, start, end), closings));
            start = end;
        }
        return all;
    }

    /** Where the unit of the row before ends. */
    private int endOfUnit(int[] ordered, int from, int to) {
        int end = from;
        while (end < to && visits.unit(ordered[end]) == visits.unit(ordered[end - 1])) {
            end++;
        }
        return end;
    }

    private List<Visit> visitsOf(int[] ordered, int from, int to) {
        String unitId = units.get(visits.unit(ordered[from])).id();
        List<Visit> some = new ArrayList<>(to - from);
        for (int i = from; i < to; i++) {
            some.add(visits.visit(ordered[i], unitId));
        }
        some.sort(Assessment.IN_ORDER);
        return some;
    }

    /** Judges all and writes one row each, unit by unit in order of identifiers, each in order of time. */
    void judge(Closings closings, Ahead ahead, boolean withAdvice, OutputStream out) throws IOException {
        ThreadLocal<FleetProspects> prospects = ThreadLocal.withInitial(ahead);
        ArrayDeque<Future<byte[]>> waiting = new ArrayDeque<>();
        ArrayDeque<Integer> sizes = new ArrayDeque<>();
        for (int from = 0; from < rows.length || !waiting.isEmpty();) {
            if (from < rows.length && waiting.size() < AHEAD * workers.count()) {
                int begin = from;
                int end = endOfUnit(rows, Math.min(rows.length, from + VISITS_AT_ONCE), rows.length);
                waiting.add(workers.begin(() -> judged(begin, end, closings, prospects.get(), withAdvice)));
                sizes.add(end - begin);
                from = end;
            } else {
                out.write(Workers.result(waiting.remove()));
                progress.steps("visits judged", sizes.remove());
            }
        }
    }

    private byte[] judged(int from, int to, Closings closings, FleetProspects fleet, boolean withAdvice) {
        VerdictRows written = new VerdictRows(withAdvice);
        for (int start = from; start < to;) {
            int end = endOfUnit(rows, start + 1, to);
            Unit unit = units.get(visits.unit(rows[start]));
            UnitProspects prospects = fleet.of(unit);
            for (Verdict verdict : Assessment.briefly(unit, visitsOf(rows, start, end), closings)) {
                written.add(prospects.after(verdict));
            }
            start = end;
        }
        return written.bytes();
    }

    @Override
    public void close() {
        workers.close();
    }
}
