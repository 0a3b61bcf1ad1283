package org.longsummer.files;

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
import java.util.List;
import org.longsummer.chain.visit.Visit;

/**
 * The visits of a file as compact bytes in a temporary file, some 130 each, with 16 bytes each in memory to find them by: any number of
 * visits in little heap. The operating system keeps in memory what it has room for. Add all, then read; reading may be done by many.
 */
final class PackedVisits implements Closeable {
    private static final int SEGMENT = 1 << 26;

    private final Path file;
    private final FileChannel channel;
    private final List<MappedByteBuffer> segments = new ArrayList<>();
    private final VisitBytes packer = new VisitBytes();
    private long[] places = new long[1 << 10];
    private int[] units = new int[1 << 10];
    private int[] days = new int[1 << 10];
    private int count;

    /** @throws IOException when there is no room for the temporary file */
    PackedVisits() throws IOException {
        file = Files.createTempFile("longsummer-visits", ".packed");
        try {
            channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
        } catch (IOException e) {
            Files.deleteIfExists(file);
            throw e;
        }
    }

    int count() {
        return count;
    }

    /** @param unit number of its unit, from 0 on */
    void add(Visit visit, int unit) {
        ByteBuffer bytes = packer.of(visit);
        if (segments.isEmpty() || last().remaining() < bytes.remaining()) {
            segments.add(mapped(bytes.remaining()));
        }
        if (count == places.length) {
            grow();
        }
        places[count] = (long) (segments.size() - 1) * SEGMENT + last().position();
        units[count] = unit;
        days[count] = Math.toIntExact(visit.utcDay().toEpochDay());
        last().put(bytes);
        count++;
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

    /** The visit of a row, which belongs to the unit of this id. */
    Visit visit(int row, String unitId) {
        ByteBuffer segment = segments.get((int) (places[row] / SEGMENT)).duplicate();
        segment.position((int) (places[row] % SEGMENT));
        return VisitBytes.read(segment, unitId);
    }

    int unit(int row) {
        return units[row];
    }

    LocalDate day(int row) {
        return LocalDate.ofEpochDay(days[row]);
    }

    /** All rows by their units' numbers; those of one unit as they were added. */
    int[] byUnit(int unitCount) {
        int[] ends = new int[unitCount + 1];
        for (int row = 0; row < count; row++) {
            ends[units[row] + 1]++;
        }
        return placed(ends, null, units, 0);
    }

    /** All rows by their UTC days; those of one day in the order given. */
    int[] byDay(int[] order) {
        int first = Integer.MAX_VALUE;
        int last = Integer.MIN_VALUE;
        for (int row = 0; row < count; row++) {
            first = Math.min(first, days[row]);
            last = Math.max(last, days[row]);
        }
        int[] ends = new int[count == 0 ? 1 : last - first + 2];
        for (int row = 0; row < count; row++) {
            ends[days[row] - first + 1]++;
        }
        return placed(ends, order, days, first);
    }

    /** Sorts by counting: stable, and quick for a million rows. */
    private int[] placed(int[] counts, int[] order, int[] keys, int first) {
        for (int i = 1; i < counts.length; i++) {
            counts[i] += counts[i - 1];
        }
        int[] placed = new int[count];
        for (int i = 0; i < count; i++) {
            int row = order == null ? i : order[i];
            placed[counts[keys[row] - first]++] = row;
        }
        return placed;
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
