package org.longsummer.store;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.jdbi.v3.core.Jdbi;

/**
 * Counts that were made before and still hold, because nothing was written since: counting a large fleet costs more than listing a page
 * of it. The database itself says whether anybody, in this process or another, has written.
 */
final class KeptCounts {
    private static final int MOST = 200;

    private final Jdbi watching;
    private final Map<Object, Object> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, Object> eldest) {
            return size() > MOST;
        }
    };
    private long version = -1;

    /** @param watching one connection that never writes, always the same: only to it do the versions that it tells mean anything */
    KeptCounts(Jdbi watching) {
        this.watching = watching;
    }

    /** What was counted under this question, or is counted now. */
    @SuppressWarnings("unchecked")
    <T> T of(Object question, Supplier<T> counting) {
        long now;
        synchronized (this) {
            now = watching.withHandle(handle -> handle.createQuery("pragma data_version").mapTo(Long.class).one());
            if (now != version) {
                kept.clear();
                version = now;
            }
            if (kept.containsKey(question)) {
                return (T) kept.get(question);
            }
        }
        T counted = counting.get();
        synchronized (this) {
            if (now == version) {
                kept.put(question, counted);
            }
        }
        return counted;
    }
}
