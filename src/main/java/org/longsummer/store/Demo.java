package org.longsummer.store;

import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * The mark that what is stored is invented. A store is a demo as a whole or not at all, so that nothing invented is ever learned from
 * beside real readings.
 */
public final class Demo {
    /** Those that refer come before those they refer to. */
    private static final List<String> TABLES = List.of("visit_round_stop", "visit_round", "stand", "sheet_link", "planned_work", "quote", "price", "photo", "unit_change", "standing",
            "verdict", "withdrawal", "visit", "instruments",
            "unit", "depot", "technician", "business", "closing", "setting");

    private final Jdbi reader;
    private final Jdbi writer;
    private final LearnedLevels learned;

    Demo(Jdbi reader, Jdbi writer, LearnedLevels learned) {
        this.reader = reader;
        this.writer = writer;
        this.learned = learned;
    }

    /** What is stored is the demo, with whatever was added to it. */
    public boolean isThere() {
        return reader.withHandle(handle -> Settings.read(handle, Settings.DEMO).isPresent());
    }

    /**
     * Marks an empty store as a demo.
     *
     * @return false, and nothing is changed, when anything is stored
     */
    public boolean begin() {
        return writer.inTransaction(handle -> {
            boolean empty = handle.createQuery("select count(*) from unit").mapTo(Integer.class).one() == 0
                    && handle.createQuery("select count(*) from depot").mapTo(Integer.class).one() == 0;
            if (empty) {
                Settings.write(handle, Settings.DEMO, "yes");
            }
            return empty;
        });
    }

    /**
     * Removes the demo and whatever was added to it, so that the store is empty.
     *
     * @return false, and nothing is changed, when what is stored is not the demo
     */
    public boolean remove() {
        boolean removed = writer.inTransaction(handle -> {
            boolean demo = Settings.read(handle, Settings.DEMO).isPresent();
            if (demo) {
                TABLES.forEach(table -> clear(handle, table));
            }
            return demo;
        });
        learned.reload();
        return removed;
    }

    private static void clear(Handle handle, String table) {
        handle.createUpdate("delete from " + table).execute();
    }
}
