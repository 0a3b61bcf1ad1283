package org.longsummer.store;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Future;
import java.util.function.ObjIntConsumer;
import java.util.function.Supplier;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.UnitLessons;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closer;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Lesson;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;

/**
 * Judges a fleet of any size on all processors: what {@link Assessment} says, in little memory. First what the fleet teaches is learned
 * day by day, the units of one day side by side; then the units are judged side by side, each from its own visits and the closings.
 * What is written does not depend on who was quicker.
 */
public final class PackedFleet implements AutoCloseable {
    /** Units of one day taken by one worker at a time: fewer are not worth handing over. */
    private static final int UNITS_AT_ONCE = 64;
    /** Visits judged by one worker at a time, give or take one unit's. */
    private static final int VISITS_AT_ONCE = 512;

    private final PackedVisits visits;
    private final List<Unit> units;
    private final int[] rows;
    private final Workers workers;
    private final ObjIntConsumer<String> done;

    /**
     * @param units those of the visits, by their numbers
     * @param workerCount how many work at once
     * @param done told what was done, and to how many visits
     */
    public PackedFleet(PackedVisits visits, List<Unit> units, int workerCount, ObjIntConsumer<String> done) {
        this.visits = visits;
        this.units = units;
        this.rows = visits.byUnit();
        this.done = done;
        this.workers = new Workers(workerCount);
    }

    /** Where one worker writes the verdicts of some units. */
    public interface Written {
        /** @param verdicts of all visits of a unit, in order of time */
        void unit(Unit unit, List<Verdict> verdicts);

        byte[] bytes();
    }

    /**
     * Learns across units day by day, closing each behind it.
     *
     * @param before the first day from which nothing is learned yet
     */
    public Closings learn(LocalDate before) {
        Closings closings = new Closings();
        UnitLessons[] lessons = new UnitLessons[units.size()];
        int[] ordered = visits.byDay(rows);
        for (int from = 0; from < ordered.length && visits.day(ordered[from]).isBefore(before);) {
            LocalDate day = visits.day(ordered[from]);
            int to = from + 1;
            while (to < ordered.length && visits.day(ordered[to]).equals(day)) {
                to++;
            }
            closings.add(day, Closer.close(closings, day, lessonsOfDay(ordered, from, to, lessons, closings)));
            done.accept("visits learned from", to - from);
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
        List<Visit> some = new ArrayList<>(to - from);
        for (int i = from; i < to; i++) {
            some.add(visits.visit(ordered[i]));
        }
        some.sort(Assessment.IN_ORDER);
        return some;
    }

    /** Judges all and writes them unit by unit in order of identifiers. */
    public void judge(Closings closings, Supplier<? extends Written> written, OutputStream out) throws IOException {
        workers.<Judged, IOException>inOrder(new Pieces(closings, written), judged -> {
            out.write(judged.bytes());
            done.accept("visits judged", judged.visits());
        });
    }

    private record Judged(int visits, byte[] bytes) {}

    /** Some units after others. */
    private final class Pieces implements Iterator<Callable<Judged>> {
        private final Closings closings;
        private final Supplier<? extends Written> written;
        private int next;

        Pieces(Closings closings, Supplier<? extends Written> written) {
            this.closings = closings;
            this.written = written;
        }

        @Override
        public boolean hasNext() {
            return next < rows.length;
        }

        @Override
        public Callable<Judged> next() {
            int from = next;
            int to = endOfUnit(rows, Math.min(rows.length, from + VISITS_AT_ONCE), rows.length);
            next = to;
            return () -> new Judged(to - from, judged(from, to, closings, written.get()));
        }
    }

    private byte[] judged(int from, int to, Closings closings, Written written) {
        for (int start = from; start < to;) {
            int end = endOfUnit(rows, start + 1, to);
            Unit unit = units.get(visits.unit(rows[start]));
            written.unit(unit, Assessment.briefly(unit, visitsOf(rows, start, end), closings));
            start = end;
        }
        return written.bytes();
    }

    @Override
    public void close() {
        workers.close();
    }
}
