package org.longsummer.files;

import java.util.Arrays;

/**
 * Remembers in which row of a file each id stood, in 20 bytes an id instead of the some 150 of a map: a file may have millions. Ids are
 * told apart by 128 bits of a hash, so that two different ones are taken for the same once in 10<sup>26</sup> files of a million rows.
 */
final class IdsSeen {
    private static final long FIRST = 0x9E3779B97F4A7C15L;
    private static final long SECOND = 0xC2B2AE3D27D4EB4FL;

    private long[] first = new long[1 << 10];
    private long[] second = new long[1 << 10];
    private int[] rows = new int[1 << 10];
    private int count;

    /**
     * Notes an id.
     *
     * @param row its row, from 1 on
     * @return the row where it stood before; 0, and this row is noted, when it is new
     */
    long put(String id, long row) {
        if (2 * count >= rows.length) {
            grow();
        }
        long a = hash(id, FIRST);
        long b = hash(id, SECOND);
        int at = place(a, b);
        if (rows[at] == 0) {
            first[at] = a;
            second[at] = b;
            rows[at] = Math.toIntExact(row);
            count++;
            return 0;
        }
        return rows[at];
    }

    /** Where an id stands or would stand. */
    private int place(long a, long b) {
        int mask = rows.length - 1;
        int at = (int) (a >>> 32) & mask;
        while (rows[at] != 0 && (first[at] != a || second[at] != b)) {
            at = (at + 1) & mask;
        }
        return at;
    }

    private void grow() {
        long[] oldFirst = first;
        long[] oldSecond = second;
        int[] oldRows = rows;
        first = new long[2 * oldRows.length];
        second = new long[2 * oldRows.length];
        rows = new int[2 * oldRows.length];
        Arrays.fill(rows, 0);
        for (int i = 0; i < oldRows.length; i++) {
            if (oldRows[i] != 0) {
                int at = place(oldFirst[i], oldSecond[i]);
                first[at] = oldFirst[i];
                second[at] = oldSecond[i];
                rows[at] = oldRows[i];
            }
        }
    }

    /** Every letter goes through a multiplication that spreads it over all bits; the end through Stafford's mix 13. */
    private static long hash(String id, long odd) {
        long h = odd ^ id.length();
        for (int i = 0; i < id.length(); i++) {
            h = (h ^ id.charAt(i)) * odd;
            h ^= h >>> 29;
        }
        h = (h ^ (h >>> 30)) * 0xBF58476D1CE4E5B9L;
        h = (h ^ (h >>> 27)) * 0x94D049BB133111EBL;
        return h ^ (h >>> 31);
    }
}
