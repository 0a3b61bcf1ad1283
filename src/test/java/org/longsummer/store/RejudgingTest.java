package org.longsummer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an earlier method judged is judged again, while people work, and after an interruption the rest of it. */
class RejudgingTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2031-06-05T18:00:00Z"), ZoneOffset.UTC);
    private static final int UNITS = 70;

    @TempDir
    Path data;

    @BeforeEach
    void fleet() {
        try (Store store = Store.open(data, CLOCK)) {
            store.judging().takeIn(intake -> {
                for (int i = 0; i < UNITS; i++) {
                    intake.unit(Samples.unit("u" + i));
                    intake.visit(Samples.entry("a" + i, "u" + i, "2031-06-01T15:00:00Z"));
                }
                intake.unit(Samples.unit("never visited"));
            }, unit -> { });
            assertEquals(Optional.empty(), store.rejudging().progress(), "nothing is to be judged again after it was judged");
        }
    }

    /** As another version would have left it. */
    private void anotherMethodJudged() {
        Jdbi.create("jdbc:sqlite:" + data.resolve(Store.FILE)).useHandle(handle -> handle.execute(
                "update standing set judged_by = 999, state = 'act', p_impact = 0.99"));
        Jdbi.create("jdbc:sqlite:" + data.resolve(Store.FILE)).useHandle(handle -> handle.execute("update verdict set p_impact = 0.99"));
    }

    @Test
    void itGoesOnWhereItWasAndSaysHowFarItIs() throws Exception {
        List<String> before = verdicts();
        anotherMethodJudged();
        assertFalse(before.equals(verdicts()));
        try (Store store = Store.open(data, CLOCK)) {
            assertEquals(Optional.of(new Rejudging.Progress(UNITS + 1, UNITS + 1)), store.rejudging().progress());
            assertTrue(store.rejudging().step());
            assertEquals(UNITS + 1 - 20, store.rejudging().progress().orElseThrow().left());
        }
        try (Store store = Store.open(data, CLOCK)) {
            assertEquals(UNITS + 1 - 20, store.rejudging().progress().orElseThrow().left(), "after an interruption the rest is left");
            assertInstanceOf(Saving.Stored.class, store.judging().save(Samples.entry("b", "u69", "2031-06-05T15:00:00Z")));
            store.judging().withdraw("b", "Ines", "only to see that people can work meanwhile");
            while (store.rejudging().step()) {
                assertTrue(store.rejudging().progress().map(Rejudging.Progress::percentDone).orElse(0) < 100);
            }
            assertEquals(Optional.empty(), store.rejudging().progress());
        }
        assertEquals(before, verdicts());
        assertEquals(List.of(), RecordCheck.run(data, CLOCK, unit -> { }).differingUnits());
    }

    @Test
    void itIsDoneInTheBackgroundOnceStarted() throws Exception {
        List<String> before = verdicts();
        anotherMethodJudged();
        try (Store store = Store.open(data, CLOCK); Rejudging judging = store.rejudging().start()) {
            for (int i = 0; i < 600 && judging.progress().isPresent(); i++) {
                Thread.sleep(100);
            }
            assertEquals(Optional.empty(), judging.progress());
        }
        assertEquals(before, verdicts());
    }

    private List<String> verdicts() {
        try (Store store = Store.open(data, CLOCK)) {
            List<String> all = new ArrayList<>();
            store.verdicts().forEach(verdict -> all.add(verdict.visitId() + " " + verdict.state() + " " + verdict.probabilityOfImpact() + " " + verdict.severity()));
            return all;
        }
    }
}
