package org.longsummer.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.ObjLongConsumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Money;
import org.longsummer.store.PlannedWork;

/** A {@code work.csv}: the work that is planned for units, and what became of it. */
final class PlansFile {
    static final String NAME = "work.csv";
    static final Layout LAYOUT = new Layout(List.of("plan_id", "unit_id", "works", "planned_for", "price", "currency", "note", "planned_by",
            "planned_at", "ended_as", "ended_by", "ended_at"), List.of(List.of("unit_id"), List.of("works"), List.of("planned_for")));

    private final Predicate<String> isKnown;
    private final Function<String, Optional<PlannedWork>> known;
    private final String by;
    private final Instant now;
    private final String currency;
    private final Map<String, Long> rows = new HashMap<>();

    /**
     * @param isKnown whether there is a unit of an id
     * @param known the plan of an id, where there is one: what a cell leaves open is taken from it
     * @param by who plans, where the file does not say
     * @param now when, where the file does not say
     * @param currency of prices, where the file does not say
     */
    PlansFile(Predicate<String> isKnown, Function<String, Optional<PlannedWork>> known, String by, Instant now, String currency) {
        this.isKnown = isKnown;
        this.known = known;
        this.by = by;
        this.now = now;
        this.currency = currency;
    }

    static void write(Path file, List<PlannedWork> plans) throws IOException {
        try (RecordWriter writer = new RecordWriter(file, LAYOUT.known())) {
            plans.forEach(plan -> writer.row(cells(plan)));
        }
    }

    /** The cells of a plan, in the order of the layout. */
    static List<String> cells(PlannedWork plan) {
        List<String> cells = new ArrayList<>(List.of(Cell.escaped(plan.id()), Cell.escaped(plan.unitId()),
                plan.works().stream().map(Row::word).collect(Collectors.joining("+")), plan.plannedFor().toString(),
                plan.price().map(Money::number).orElse(""), plan.price().map(Money::currency).orElse(""), Cell.escaped(plan.note()),
                Cell.escaped(plan.plannedBy()), plan.plannedAt().toString()));
        cells.add(plan.ended().map(ended -> Row.word(ended.as())).orElse(""));
        cells.add(plan.ended().map(ended -> Cell.escaped(ended.by())).orElse(""));
        cells.add(plan.ended().map(ended -> ended.at().toString()).orElse(""));
        return cells;
    }

    void read(Path file, Findings findings, ObjLongConsumer<PlannedWork> plans) throws IOException {
        Sheet.read(file, LAYOUT, findings, row -> plan(row).ifPresent(plan -> plans.accept(plan, row.number())));
    }

    private Optional<PlannedWork> plan(Row row) {
        String unitId = row.required("unit_id", "name the unit; work without one cannot be planned");
        if (!unitId.isEmpty() && !isKnown.test(unitId)) {
            row.problem("unit_id", unitId, "no unit has this id; add it to the units or correct it here");
        }
        List<Work> works = works(row);
        Optional<LocalDate> day = row.day("planned_for");
        if (row.text("planned_for").isEmpty()) {
            row.problem("planned_for", "", "write the day by which it is to be done, such as 2026-05-11");
        }
        Optional<Money> price = price(row);
        Optional<PlannedWork.Ended> ended = ended(row);
        Optional<Instant> at = row.optionalMoment("planned_at").map(OffsetDateTime::toInstant);
        if (!row.isSound()) {
            return Optional.empty();
        }
        String id = id(row, unitId, works, day.orElseThrow());
        Optional<PlannedWork> before = known.apply(id);
        return Optional.of(new PlannedWork(id, unitId, works, day.get(), price.or(() -> before.flatMap(PlannedWork::price)),
                or(row, "note", before.map(PlannedWork::note).orElse("")), or(row, "planned_by", before.map(PlannedWork::plannedBy).orElse(by)),
                at.or(() -> before.map(PlannedWork::plannedAt)).orElse(now).truncatedTo(ChronoUnit.MILLIS),
                ended.or(() -> before.flatMap(PlannedWork::ended)))).filter(plan -> row.isSound());
    }

    private static String or(Row row, String column, String before) {
        String text = row.words(column);
        return text.isEmpty() ? before : text;
    }

    /** A file without ids gets ids that are the same each time it is read. */
    private String id(Row row, String unitId, List<Work> works, LocalDate day) {
        String given = row.words("plan_id");
        String id = given.isEmpty() ? UUID.nameUUIDFromBytes((unitId + "\n" + works + "\n" + day).getBytes(StandardCharsets.UTF_8)).toString() : given;
        Long earlier = rows.putIfAbsent(id, row.number());
        if (earlier != null) {
            row.problem(given.isEmpty() ? "works" : "plan_id", given.isEmpty() ? row.text("works") : given,
                    "row " + earlier + " plans the same; keep one of the rows, or give each a plan_id of its own");
        }
        return id;
    }

    private static List<Work> works(Row row) {
        String text = row.text("works").toLowerCase(Locale.ROOT);
        Set<Work> works = new LinkedHashSet<>();
        for (String word : text.split("\\s*\\+\\s*", -1)) {
            if (word.equals("both_coils")) {
                works.addAll(List.of(Work.EVAPORATOR_COIL, Work.CONDENSER_COIL));
                continue;
            }
            Optional<Work> work = Arrays.stream(Work.values()).filter(value -> Row.word(value).equals(word)).findFirst();
            work.ifPresent(works::add);
            if (work.isEmpty()) {
                row.problem("works", row.text("works"), "write both_coils, " + Arrays.stream(Work.values()).map(Row::word)
                        .collect(Collectors.joining(", ")) + ", or several of them joined by +");
                return List.of();
            }
        }
        return List.copyOf(works);
    }

    private Optional<Money> price(Row row) {
        String given = row.text("currency").toUpperCase(Locale.ROOT);
        if (!given.isEmpty() && !Money.isCurrency(given)) {
            row.problem("currency", row.text("currency"), "write the three letters of a currency, such as USD, or leave it empty for the fleet's");
            return Optional.empty();
        }
        Optional<Double> amount = row.quantity("price", number -> number);
        if (amount.filter(number -> number < 0 || number > 1e7).isPresent()) {
            row.problem("price", row.text("price"), "write an amount from 0 to 10000000, or leave it empty when it is not known");
            return Optional.empty();
        }
        return amount.map(number -> Money.of(number, given.isEmpty() ? currency : given));
    }

    private Optional<PlannedWork.Ended> ended(Row row) {
        PlannedWork.As as = row.choice("ended_as", PlannedWork.As.class, null);
        Instant at = row.optionalMoment("ended_at").map(OffsetDateTime::toInstant).orElse(now)
                .truncatedTo(ChronoUnit.MILLIS);
        String who = row.words("ended_by");
        return Optional.ofNullable(as).map(ending -> new PlannedWork.Ended(ending, who.isEmpty() ? by : who, at));
    }
}
