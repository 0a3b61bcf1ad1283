package org.longsummer.store;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.chain.Method;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Judges units again that an earlier method judged, or whose depot was changed, some at a time, while people work. What is left to do
 * stands in the record, so that whoever opens it after an interruption goes on where it was.
 */
public final class Rejudging implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Rejudging.class);
    private static final String LEFT = "(judged_by < :method or judged_by > :method)";
    /** So few that nobody who saves a visit meanwhile waits long. */
    private static final int UNITS_AT_ONCE = 20;
    /** As long as it worked it leaves the record to others. */
    private static final BackgroundWork.Pace PACE = new BackgroundWork.Pace(worked -> worked, Duration.ofSeconds(1), Duration.ofMinutes(1));

    private final Jdbi reader;
    private final Jdbi writer;
    private final LearnedLevels learned;
    private final BackgroundWork work = new BackgroundWork("judging again", this::step, PACE);

    Rejudging(Jdbi reader, Jdbi writer, LearnedLevels learned) {
        this.reader = reader;
        this.writer = writer;
        this.learned = learned;
    }

    /**
     * How far it is.
     *
     * @param left units that are still to be judged again, from 1 on
     * @param all units in the record
     */
    public record Progress(int left, int all) {
        /** From 0 to 99. */
        public int percentDone() {
            return (int) (99L * (all - left) / all);
        }
    }

    /** Empty when every unit is judged by what holds now. */
    public Optional<Progress> progress() {
        return reader.withHandle(handle -> {
            int left = left(handle);
            return left == 0 ? Optional.empty()
                    : Optional.of(new Progress(left, handle.createQuery("select count(*) from standing").mapTo(Integer.class).one()));
        });
    }

    private static int left(Handle handle) {
        return handle.createQuery("select count(*) from standing where " + LEFT).bind("method", Method.NUMBER).mapTo(Integer.class).one();
    }

    /** The units of a depot are to be judged again. */
    static void begin(Handle handle, String depot) {
        handle.createUpdate("update standing set judged_by = 0 where depot = :depot").bind("depot", depot).execute();
    }

    /** All units are to be judged again. */
    public void begin() {
        writer.useTransaction(handle -> handle.execute("update standing set judged_by = 0"));
    }

    /** From now on, until this is closed, whatever is to be judged again is. */
    public Rejudging start() {
        work.start();
        return this;
    }

    /**
     * Judges the next few.
     *
     * @return false when there was nothing to do
     */
    public boolean step() {
        if (next(reader).isEmpty()) {
            return false;
        }
        writer.useTransaction(handle -> new FleetJudging(handle, learned.known(handle).closings(), unit -> { }).judge(next(handle)));
        if (next(reader).isEmpty()) {
            LOG.atInfo().addKeyValue("method", Method.NUMBER).log("judged again");
        }
        return true;
    }

    private static List<String> next(Jdbi jdbi) {
        return jdbi.withHandle(Rejudging::next);
    }

    private static List<String> next(Handle handle) {
        return handle.createQuery("select unit_id from standing where " + LEFT + " limit " + UNITS_AT_ONCE).bind("method", Method.NUMBER)
                .mapTo(String.class).list();
    }

    @Override
    public void close() {
        work.close();
    }
}
