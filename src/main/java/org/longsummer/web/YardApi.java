package org.longsummer.web;

import io.javalin.http.ContentType;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.longsummer.access.Reach;
import org.longsummer.chain.condition.Condition;
import org.longsummer.files.YardFile;
import org.longsummer.store.Depot;
import org.longsummer.store.Standing;
import org.longsummer.store.Store;
import org.longsummer.store.YardCounts;
import org.longsummer.store.YardFilter;
import org.longsummer.store.YardPage;
import org.longsummer.web.YardQuestion.Understood;
import org.longsummer.wire.Problem;

/** The yard: the list of units, and the sentences above it that are also its filters. */
final class YardApi {
    private static final int ROWS = 50;
    private static final long QUARTER_HOUR_SECONDS = 900;
    /** Parts of an address that say behind which row a page goes on. */
    private static final String AFTER = "after";
    private static final String AFTER_UNIT = "after_unit";

    private final Store store;
    private final Clock clock;

    YardApi(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /**
     * One page of the yard.
     *
     * @param unitsInFleet all units; 0 on a first start
     * @param found units that the filter lets through
     * @param next what to add to the address for the page after this one; absent on the last one
     * @param unvisitedSince the day that "not visited since" counts from, where one was named
     * @param sentences numbers that are filters
     * @param depots names of all depots
     * @param conditions words and phrases to filter by
     * @param rows most pressing first, unless another order was asked for
     */
    record YardView(int unitsInFleet, int found, Optional<Map<String, String>> next, Optional<String> unvisitedSince, List<Sentence> sentences,
            List<String> depots, List<Choice> conditions, List<YardRows.Row> rows) {}

    /** A number of units and the filter that lists them. */
    record Sentence(String key, int count, Map<String, String> filter) {}

    /** A word of the files and its phrase on a screen. */
    record Choice(String word, String phrase) {}

    void show(Context request) {
        Reader.system(request);
        Understood asked = asked(request);
        Page page = new Page(asked, Asking.of(request).reach(), after(request, asked), clock.instant().getEpochSecond() / QUARTER_HOUR_SECONDS);
        byte[] answer = store.answers().of(page, () -> request.jsonMapper().toJsonString(view(page), YardView.class).getBytes(StandardCharsets.UTF_8));
        request.contentType(ContentType.APPLICATION_JSON).result(answer);
    }

    /**
     * All that a page depends on besides what is stored.
     *
     * @param quarterHour since 1970: what day it is at a depot changes with one of them, in every time zone
     */
    private record Page(Understood asked, Reach reach, Optional<YardPage.After> after, long quarterHour) {}

    private YardView view(Page asked) {
        List<Depot> depots = store.answers().of(List.of("depots", asked.reach), () -> store.depots().all(asked.reach));
        YardFilter all = YardFilter.ALL.within(asked.reach);
        int unitsInFleet = store.standings().count(all) + store.standings().count(all.outOfServiceInstead());
        YardPage page = store.standings().page(asked.asked.filter(), asked.asked.order(), asked.after, ROWS);
        return new YardView(unitsInFleet, store.standings().count(asked.asked.filter()), page.next().map(YardApi::address),
                asked.asked.since().map(LocalDate::toString), sentences(asked.asked), depots.stream().map(Depot::name).toList(), conditions(),
                new YardRows(depots, clock).of(page.rows()));
    }

    /** All that the filter lets through, as CSV. */
    void file(Context request) throws IOException {
        Understood asked = asked(request);
        write(request, rows -> store.standings().forEach(asked.filter(), asked.order(), rows));
    }

    /** What was chosen, as CSV. */
    void chosenFile(Context request) throws IOException {
        YardChoice choice = YardChoice.of(request, store, today());
        write(request, choice::forEach);
    }

    private void write(Context request, Consumer<Consumer<Standing>> rows) throws IOException {
        request.contentType("text/csv;charset=utf-8").header("Content-Disposition", "attachment; filename=\"yard-" + today() + ".csv\"");
        try (YardFile file = new YardFile(request.outputStream())) {
            rows.accept(file::write);
        }
    }

    private Understood asked(Context request) {
        return YardQuestion.of(request::queryParam, Asking.of(request).yard(), today());
    }

    private static Optional<YardPage.After> after(Context request, Understood asked) {
        Optional<String> unit = Reader.text(request, AFTER_UNIT);
        if (unit.isEmpty()) {
            return Optional.empty();
        }
        String value = Optional.ofNullable(request.queryParam(AFTER)).orElse("");
        try {
            asked.order().check(value);
            return Optional.of(new YardPage.After(value, unit.get()));
        } catch (NumberFormatException e) {
            throw new Refused(400, List.of(new Problem(AFTER, value, "What the page before gave as next.", "Leave it out for the first page.")));
        }
    }

    private static Map<String, String> address(YardPage.After after) {
        return Map.of(AFTER, after.value(), AFTER_UNIT, after.unitId());
    }

    private List<Sentence> sentences(Understood asked) {
        YardCounts counts = store.standings().counts(asked.place(), asked.days());
        return List.of(new Sentence("act", counts.act(), Map.of("state", "act")),
                new Sentence("drifting", counts.drifting(), Map.of("state", "drifting")),
                new Sentence("steady", counts.steady(), Map.of("state", "steady")),
                new Sentence(YardQuestion.NEVER_JUDGED, counts.neverJudged(), Map.of("state", YardQuestion.NEVER_JUDGED)),
                new Sentence("retake", counts.toRetake(), Map.of("state", "retake")),
                new Sentence("unvisited", counts.notChecked(), Map.of("seen", "unvisited")),
                new Sentence("overdue", counts.overdue(), Map.of("due", "overdue")),
                new Sentence("filters", counts.filterOverdue(), Map.of("filter", "overdue")),
                new Sentence("warranty", counts.warrantyEnding(), Map.of("warranty", "ending")),
                new Sentence("planned", counts.workPlanned(), Map.of("planned", "yes")),
                new Sentence("all", counts.units(), Map.of()),
                new Sentence("out_of_service", counts.outOfService(), Map.of("duty", "out_of_service")),
                new Sentence("sold", counts.sold(), Map.of("duty", "sold")));
    }

    private static List<Choice> conditions() {
        List<Choice> choices = new ArrayList<>();
        for (Condition condition : Condition.values()) {
            if (condition != Condition.NONE) {
                choices.add(new Choice(condition.word(), condition.phrase()));
            }
        }
        return choices;
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
    }
}
