package org.longsummer.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Looks a record over while people work: its pages, its references, rows that nothing belongs to, and whether judging everything again
 * says the same as what is stored. The record itself is only read; the judging is done in a copy.
 */
public final class RecordCheck {
    /** What must be so, by what it is called when it is not: each query counts the rows that break it. */
    private static final Map<String, String> RULES = rules();

    private RecordCheck() {}

    /**
     * What was found.
     *
     * @param units in the record
     * @param visits in the record, those that no longer count included
     * @param faults what must not be; empty when the record is whole
     * @param differingUnits units whose verdicts or standing differ from what this version says of the same visits
     */
    public record Report(int units, int visits, List<String> faults, List<String> differingUnits) {}

    /**
     * Looks a record over.
     *
     * @param unitJudged told the id of each unit that was judged again
     * @throws StoreRefused when there is no record, or a newer one
     * @throws IOException when the copy cannot be written; it goes to the directory for temporary files
     */
    public static Report run(Path dataDirectory, Clock clock, Consumer<String> unitJudged) throws IOException {
        Path record = dataDirectory.resolve(Store.FILE);
        if (!Files.exists(record)) {
            throw new StoreRefused(dataDirectory + " holds no record; check the path.");
        }
        RawFile.refuseForeign(record);
        Path place = Files.createTempDirectory("longsummer-check");
        try {
            Path copy = place.resolve(Store.FILE);
            Optional<Report> damaged = copied(record, copy);
            return damaged.isPresent() ? damaged.get() : judgedAgain(place, copy, clock, unitJudged);
        } finally {
            delete(place);
        }
    }

    private static Optional<Report> copied(Path record, Path copy) {
        try (RawFile file = new RawFile(record)) {
            String damage = file.integrity();
            if (!damage.isEmpty()) {
                return Optional.of(new Report(0, 0, List.of(damage), List.of()));
            }
            file.copyInto(copy);
            return Optional.empty();
        }
    }

    private static Report judgedAgain(Path place, Path copy, Clock clock, Consumer<String> unitJudged) {
        Schema.refuseNewer(copy, copy.getFileName());
        try (RawFile file = new RawFile(copy)) {
            file.keepAside("verdict");
            file.keepAside("standing");
        }
        try (Store again = Store.open(place, clock)) {
            List<String> faults;
            try (RawFile file = new RawFile(copy)) {
                faults = file.broken(RULES);
            }
            again.judging().judgeAllAgain(unitJudged);
            try (RawFile file = new RawFile(copy)) {
                List<String> differing = Stream.concat(file.changedSince("verdict", "visit_id").stream(),
                        file.changedSince("standing", "unit_id").stream()).distinct().sorted().toList();
                return new Report(again.units().count(), again.visits().count(), faults, differing);
            }
        }
    }

    private static void delete(Path place) throws IOException {
        try (Stream<Path> all = Files.walk(place)) {
            for (Path path : new ArrayList<>(all.sorted(Comparator.reverseOrder()).toList())) {
                Files.deleteIfExists(path);
            }
        }
    }

    private static Map<String, String> rules() {
        String counts = " not exists (select 1 from visit c where c.corrects_id = v.id) "
                + "and not exists (select 1 from withdrawal w where w.visit_id = v.id)";
        Map<String, String> rules = new LinkedHashMap<>();
        rules.put("visits that count have no verdict",
                "select count(*) from visit v where" + counts + " and not exists (select 1 from verdict d where d.visit_id = v.id)");
        rules.put("verdicts are of visits that do not count",
                "select count(*) from verdict d where not exists (select 1 from visit v where v.id = d.visit_id and" + counts + ")");
        rules.put("verdicts name another unit than their visit",
                "select count(*) from verdict d join visit v on v.id = d.visit_id where v.unit_id <> d.unit_id");
        rules.put("units have no standing", "select count(*) from unit where id not in (select unit_id from standing)");
        rules.put("standings count their unit's visits wrongly", "select count(*) from standing s where s.visit_count <> "
                + "(select count(*) from visit v where v.unit_id = s.unit_id and" + counts + ")");
        rules.put("standings name a visit that is not of their unit", "select count(*) from standing s where s.last_visit_id is not null "
                + "and not exists (select 1 from visit v where v.id = s.last_visit_id and v.unit_id = s.unit_id)");
        rules.put("corrections reach another unit's visit",
                "select count(*) from visit v join visit c on c.corrects_id = v.id where c.unit_id <> v.unit_id");
        rules.put("days were closed twice", "select count(*) from (select 1 from closing where learned_key = '' "
                + "and exists (select 1 from closing o where o.generation = closing.generation and o.day = closing.day "
                + "and o.learned_key <> ''))");
        return rules;
    }
}
