package org.longsummer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.access.Reach;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;

/** How the database goes about the yard's questions: by its own word, so that a fleet's size cannot be felt. */
class YardPlanTest {
    private static final LocalDate TODAY = LocalDate.of(2031, 6, 20);
    private static final Map<String, YardFilter> FILTERS = Map.ofEntries(Map.entry("all", YardFilter.ALL),
            Map.entry("state", YardFilter.ALL.inState(State.ACT)), Map.entry("retake", YardFilter.ALL.inState(State.RETAKE)),
            Map.entry("never judged", YardFilter.ALL.onlyNeverJudged()), Map.entry("condition", YardFilter.ALL.withCondition(Condition.CAPACITOR_WEAK)),
            Map.entry("since when", YardFilter.ALL.and(new YardCriterion.BegunSince(TODAY))),
            Map.entry("not visited", YardFilter.ALL.notVisitedSince(Instant.EPOCH)),
            Map.entry("not checked", YardFilter.ALL.and(new YardCriterion.NotCheckedForSeason(TODAY))),
            Map.entry("overdue", YardFilter.ALL.dueBefore(TODAY)), Map.entry("filter", YardFilter.ALL.and(new YardCriterion.FilterDueBefore(TODAY))),
            Map.entry("warranty", YardFilter.ALL.and(new YardCriterion.WarrantyEnds(TODAY, TODAY))),
            Map.entry("planned", YardFilter.ALL.and(new YardCriterion.WorkPlanned(true))),
            Map.entry("age", YardFilter.ALL.and(new YardCriterion.InstalledBefore(TODAY))), Map.entry("sold", YardFilter.ALL.of(FleetUnit.Duty.SOLD)),
            Map.entry("some depots", YardFilter.ALL.within(Reach.of(List.of("Ferrow Flats", "Lake Orrin")))));

    @TempDir
    private Path directory;
    private Store store;
    private Handle handle;

    @BeforeEach
    void open() {
        store = Store.open(directory);
        handle = Jdbi.open(RawFile.source(directory.resolve(Store.FILE)));
    }

    @AfterEach
    void close() {
        handle.close();
        store.close();
    }

    private String plan(YardFilter filter, YardOrder order, boolean goesOn) {
        YardNarrowing narrowing = new YardNarrowing(filter);
        org.jdbi.v3.core.statement.Query query = handle.createQuery("explain query plan " + Standings.ids(narrowing, order, "indexed by " + narrowing.index(order), goesOn))
                .bindMap(narrowing.values()).bind("limit", 51);
        if (goesOn) {
            query.bind("after_value", order == YardOrder.LABEL ? "a" : "1").bind("after_unit", "u");
        }
        return query.map((row, context) -> row.getString("detail")).stream().collect(Collectors.joining("; "));
    }

    @Test
    void everyFilterIsCarriedByTheIndexOfTheOrderAlone() {
        FILTERS.forEach((name, filter) -> {
            for (boolean goesOn : new boolean[] {false, true}) {
                for (YardOrder order : List.of(YardOrder.WAITING_COSTS, YardOrder.MOST_PRESSING)) {
                    String plan = plan(filter, order, goesOn);
                    assertTrue(plan.contains("COVERING INDEX " + order.index()), name + ": " + plan);
                    assertFalse(plan.contains("TEMP B-TREE"), name + ": " + plan);
                    assertEquals(goesOn, plan.contains("unit_id)>(?,?)"), name + ": " + plan);
                }
            }
        });
    }

    @Test
    void everyOrderHasItsIndexAndGoesOnFromARow() {
        for (YardOrder order : YardOrder.values()) {
            String plan = plan(YardFilter.ALL, order, true);
            assertTrue(plan.contains("INDEX " + order.index()) && plan.contains("unit_id)>(?,?)"), plan);
            assertFalse(plan.contains("TEMP B-TREE"), plan);
        }
        String depot = plan(YardFilter.ALL.inDepot("Lake Orrin"), YardOrder.WAITING_COSTS, true);
        assertTrue(depot.contains("INDEX standing_by_depot (depot=? AND in_service=? AND (dearest,unit_id)>(?,?))"), depot);
    }

    /** Pages one after the other hold every unit once, in the order in which one page would. */
    @Test
    void pagesGoOnWithoutGapAndWithoutDouble() {
        for (int i = 0; i < 23; i++) {
            store.units().save(Samples.unit("u" + i));
        }
        handle.execute("update standing set pressing = -(rowid % 5) / 7.0, dearest = -(rowid % 7) * 100, last_seen_ms = rowid % 3");
        for (YardOrder order : YardOrder.values()) {
            List<String> whole = ids(store.standings().page(YardFilter.ALL, order, Optional.empty(), 100));
            List<String> pages = new ArrayList<>();
            Optional<YardPage.After> after = Optional.empty();
            do {
                YardPage page = store.standings().page(YardFilter.ALL, order, after, 4);
                assertTrue(page.rows().size() <= 4);
                pages.addAll(ids(page));
                after = page.next();
            } while (after.isPresent());
            assertEquals(23, whole.size());
            assertEquals(whole, pages, order.name());
        }
    }

    /** What was counted holds until somebody writes, also from outside of this process. */
    @Test
    void countsAreNeverOlderThanTheLastWrite() {
        YardFilter wagons = YardFilter.ALL.containing("wagon");
        assertEquals(0, store.standings().count(wagons));
        for (int i = 1; i <= 3; i++) {
            store.units().save(Samples.unit("u" + i));
            assertEquals(i, store.standings().count(wagons));
            assertEquals(i, store.standings().count(wagons), "asked again");
        }
        handle.execute("update standing set in_service = 0 where unit_id = 'u2'");
        assertEquals(2, store.standings().count(wagons), "written by another connection");
    }

    /** Whatever is written where, the numbers that are put together of blocks are those that the database counts. */
    @Test
    void numbersPutTogetherOfBlocksAreThoseOfTheWhole() {
        store.judging().takeIn(intake -> {
            for (int i = 0; i < 2_500; i++) {
                intake.unit(Samples.unit("u" + i));
            }
        }, unit -> { });
        YardDays days = new YardDays(TODAY, Optional.empty(), TODAY.plusDays(120));
        Random random = new Random(1);
        for (String change : List.of("state = 'act', last_to_retake = 1", "state = 'drifting'", "depot = 'Lake Orrin'", "planned_for = '2031-07-01'",
                "in_service = 0, duty = 'sold'", "next_due_on = '2031-06-01', visit_count = 3", "filter_due_on = '2031-05-01'", "search_text = 'n0ne'")) {
            int first = random.nextInt(2_400);
            handle.execute("update standing set " + change + " where rowid between ? and ?", first, first + random.nextInt(90));
            for (YardFilter filter : List.of(YardFilter.ALL, YardFilter.ALL.inDepot("Lake Orrin"), YardFilter.ALL.of(FleetUnit.Duty.SOLD),
                    YardFilter.ALL.containing("wagon"))) {
                String where = new YardNarrowing(filter).where();
                assertEquals(handle.createQuery("select count(*) from standing s" + where).bindMap(new YardNarrowing(filter).values())
                        .mapTo(Integer.class).one(), store.standings().count(filter), change);
                YardCounts counts = store.standings().counts(filter, days);
                assertEquals(store.standings().count(filter), counts.units(), change);
                assertEquals(store.standings().count(filter.inState(State.ACT)), counts.act(), change);
                assertEquals(store.standings().count(filter.dueBefore(TODAY)), counts.overdue(), change);
                assertEquals(store.standings().count(filter.and(new YardCriterion.WorkPlanned(true))), counts.workPlanned(), change);
            }
        }
    }

    private static List<String> ids(YardPage page) {
        return page.rows().stream().map(Standing::unitId).toList();
    }

    @Test
    void theSearchForgivesLookAlikesAndTakesWordsInAnyOrder() {
        store.units().save(Samples.unit("u1"));
        for (String text : List.of("S01-51 U1", "5oi5i u1", "so15i", "wagon nb-135", "rear VAN 12", "NIMBELL ferrow")) {
            assertEquals(1, store.standings().count(YardFilter.ALL.containing(text)), text);
        }
        for (String text : List.of("so2", "wagon nb-136", "100%", "_")) {
            assertEquals(0, store.standings().count(YardFilter.ALL.containing(text)), text);
        }
    }
}
