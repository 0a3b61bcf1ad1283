package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/**
 * Numbers of units under a filter, kept by blocks of rows of the standing: counting a large fleet costs far more than looking which blocks were
 * written since, and a saved visit writes one.
 */
final class BlockCounts {
    private static final int MOST_QUESTIONS = 200;
    /** Where more than this share of the blocks were written, all are counted at once. */
    private static final double MANY = 0.5;
    private static final int ROWS_SHIFT = 10;

    private final Map<Object, Kept> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, Kept> eldest) {
            return size() > MOST_QUESTIONS;
        }
    };

    private static final class Kept {
        private Map<Long, Block> blocks = Map.of();
    }

    /** What a block's rows came to when it had been written so often. */
    private record Block(long written, int[] numbers) {}

    /**
     * A question whose answers add up over the rows.
     *
     * @param numbers expressions on the standing {@code s}, with commas between
     * @param count how many they are
     * @param narrowing which rows count
     * @param binding the values that the numbers name
     */
    record Question(String numbers, int count, YardNarrowing narrowing, UnaryOperator<Query> binding) {}

    /**
     * The sums as a transaction sees them.
     *
     * @param key equal to another one only when it asks the same
     */
    int[] of(Handle handle, Object key, Question question) {
        Kept known;
        synchronized (kept) {
            known = kept.computeIfAbsent(key, unknown -> new Kept());
        }
        // whoever asks the same meanwhile finds these blocks counted
        synchronized (known) {
            known.blocks = upToDate(handle, question, known.blocks);
            return sums(question.count, known.blocks);
        }
    }

    private static Map<Long, Block> upToDate(Handle handle, Question question, Map<Long, Block> before) {
        Map<Long, Long> written = written(handle);
        Map<Long, Block> now = new HashMap<>(before);
        now.keySet().retainAll(written.keySet());
        List<Long> open = written.keySet().stream().filter(block -> !before.containsKey(block) || before.get(block).written != written.get(block)).toList();
        if (open.isEmpty()) {
            return now;
        }
        Map<Long, int[]> counted = new HashMap<>();
        if (question.narrowing.isOfFewRows() || open.size() > MANY * written.size()) {
            counted.putAll(count(handle, question, question.narrowing.indexForBlocks(), ""));
        } else {
            open.forEach(block -> counted.putAll(count(handle, question, "not indexed", " and s.rowid between %d and %d"
                    .formatted(block << ROWS_SHIFT, (block + 1 << ROWS_SHIFT) - 1))));
        }
        open.forEach(block -> now.put(block, new Block(written.get(block), counted.getOrDefault(block, new int[question.count]))));
        return now;
    }

    private static int[] sums(int count, Map<Long, Block> blocks) {
        int[] sums = new int[count];
        blocks.values().forEach(block -> Arrays.setAll(sums, i -> sums[i] + block.numbers[i]));
        return sums;
    }

    private static Map<Long, Long> written(Handle handle) {
        Map<Long, Long> written = new HashMap<>();
        handle.createQuery("select block, written from standing_block").map((row, context) -> written.put(row.getLong(1), row.getLong(2))).list();
        return written;
    }

    private static Map<Long, int[]> count(Handle handle, Question question, String by, String within) {
        Map<Long, int[]> counted = new HashMap<>();
        question.binding.apply(handle.createQuery("select s.rowid >> " + ROWS_SHIFT + ", " + question.numbers + " from standing s " + by
                + question.narrowing.where() + within + " group by 1").bindMap(question.narrowing.values()))
                .map((row, context) -> counted.put(row.getLong(1), numbers(row, question.count))).list();
        return counted;
    }

    private static int[] numbers(ResultSet row, int count) throws SQLException {
        int[] numbers = new int[count];
        for (int i = 0; i < count; i++) {
            numbers[i] = row.getInt(i + 2);
        }
        return numbers;
    }
}
