package org.longsummer.store;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.longsummer.chain.visit.Visit;

/**
 * The visits of a file as compact bytes in a temporary file, some 130 each, or 400 with what was typed, with 16 bytes each in memory to
 * find them by: any number of visits in little heap. The operating system keeps in memory what it has room for. Add all, then read;
 * reading may be done by many.
 */
public final class PackedVisits implements Closeable {
    private static final int SEGMENT = 1 << 26;

    private final Path file;
    private final FileChannel channel;
    private final List<MappedByteBuffer> segments = new ArrayList<>();
    private final VisitBytes packer = new VisitBytes();
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<String> unitIds = new ArrayList<>();
    private final BitSet leftOut = new BitSet();
    private long[] places = new long[1 << 10];
    private int[] units = new int[1 << 10];
    private int[] days = new int[1 << 10];
    private int count;
    private boolean corrects;

    /** @throws IOException when there is no room for the temporary file */
    public PackedVisits() throws IOException {
        file = Files.createTempFile("longsummer-visits", ".packed");
        try {
            channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
        } catch (IOException e) {
            Files.deleteIfExists(file);
            throw e;
        }
    }

    public int count() {
        return count;
    }

    /** A visit for judging alone. */
    public void add(Visit visit) {
        add(visit, packer.of(visit));
    }

    /** A visit with all that is to be stored of it. */
    public void add(Entry entry) {
        corrects |= entry.correction().isPresent();
        add(entry.visit(), packer.of(entry));
    }

    private void add(Visit visit, ByteBuffer bytes) {
        if (segments.isEmpty() || last().remaining() < bytes.remaining()) {
            segments.add(mapped(bytes.remaining()));
        }
        if (count == places.length) {
            grow();
        }
        places[count] = (long) (segments.size() - 1) * SEGMENT + last().position();
        units[count] = number(visit.unitId());
        days[count] = Math.toIntExact(visit.utcDay().toEpochDay());
        last().put(bytes);
        count++;
    }

    private int number(String unitId) {
        Integer known = numbers.putIfAbsent(unitId, unitIds.size());
        if (known != null) {
            return known;
        }
        unitIds.add(unitId);
        return unitIds.size() - 1;
    }

    private MappedByteBuffer last() {
        return segments.get(segments.size() - 1);
    }

    private MappedByteBuffer mapped(int atLeast) {
        if (atLeast > SEGMENT) {
            throw new IllegalArgumentException("a visit of " + atLeast + " bytes is longer than any that a file can hold");
        }
        try {
            return channel.map(FileChannel.MapMode.READ_WRITE, (long) segments.size() * SEGMENT, SEGMENT);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void grow() {
        int wider = count + (count >> 1);
        places = Arrays.copyOf(places, wider);
        units = Arrays.copyOf(units, wider);
        days = Arrays.copyOf(days, wider);
    }

    /** Any of them takes the place of an earlier one. */
    boolean corrects() {
        return corrects;
    }

    /** A row is not listed any more by {@link #byUnit}. */
    void leaveOut(int row) {
        leftOut.set(row);
    }

    /** Forgets what was added since there were so many rows, and what was left out. */
    void backTo(int earlierCount) {
        count = earlierCount;
        leftOut.clear();
    }

    public Visit visit(int row) {
        return VisitBytes.read(at(row), unitIds.get(units[row]));
    }

    /** The same with all that is to be stored; of a row that was added so. */
    Entry entry(int row) {
        return VisitBytes.readEntry(at(row), unitIds.get(units[row]));
    }

    String id(int row) {
        return VisitBytes.readId(at(row));
    }

    private ByteBuffer at(int row) {
        return segments.get((int) (places[row] / SEGMENT)).duplicate().position((int) (places[row] % SEGMENT));
    }

    /** The number of a row's unit. */
    int unit(int row) {
        return units[row];
    }

    /** The units by their numbers, from 0 on. */
    public List<String> unitIds() {
        return Collections.unmodifiableList(unitIds);
    }

    LocalDate day(int row) {
        return LocalDate.ofEpochDay(days[row]);
    }

    /** All rows in order of their units' identifiers; those of one unit as they were added. */
    int[] byUnit() {
        int[] places = new int[unitIds.size()];
        List<String> ordered = new ArrayList<>(unitIds);
        Collections.sort(ordered);
        for (int i = 0; i < places.length; i++) {
            places[numbers.get(ordered.get(i))] = i;
        }
        int[] rows = new int[count - leftOut.cardinality()];
        int next = 0;
        for (int row = leftOut.nextClearBit(0); row < count; row = leftOut.nextClearBit(row + 1)) {
            rows[next++] = row;
        }
        return sorted(rows, row -> places[units[row]], places.length);
    }

    /** Rows by their UTC days; those of one day in the order given. */
    int[] byDay(int[] rows) {
        int first = Integer.MAX_VALUE;
        int last = Integer.MIN_VALUE;
        for (int row : rows) {
            first = Math.min(first, days[row]);
            last = Math.max(last, days[row]);
        }
        int earliest = first;
        return sorted(rows, row -> days[row] - earliest, rows.length == 0 ? 0 : last - first + 1);
    }

    private interface Key {
        int of(int row);
    }

    /** Sorts by counting: stable, and quick for a million rows. */
    private static int[] sorted(int[] rows, Key key, int keys) {
        int[] starts = new int[keys + 1];
        for (int row : rows) {
            starts[key.of(row) + 1]++;
        }
        for (int i = 1; i < starts.length; i++) {
            starts[i] += starts[i - 1];
        }
        int[] sorted = new int[rows.length];
        for (int row : rows) {
            sorted[starts[key.of(row)]++] = row;
        }
        return sorted;
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            Files.deleteIfExists(file);
        }
    }
}
