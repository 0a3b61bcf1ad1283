package org.longsummer.files;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.longsummer.store.Rounds;
import org.longsummer.store.VisitRound;

/** A {@code rounds.csv}: a row a stop, in walking order, with its round's day and title on each. */
final class RoundsFile {
    static final String NAME = "rounds.csv";
    private static final Layout LAYOUT = new Layout(List.of("round_id", "title", "for_day", "made_by", "made_at", "unit_id", "visit_id"),
            List.of(List.of("round_id"), List.of("for_day"), List.of("made_at"), List.of("unit_id"), List.of("visit_id")));

    private final Predicate<String> isKnown;
    private final Rounds stored;
    private final Map<String, VisitRound> rounds = new LinkedHashMap<>();
    private final Map<String, List<Rounds.Leg>> legs = new HashMap<>();
    private final Map<String, Long> rows = new HashMap<>();

    /**
     * @param isKnown whether there is a unit of an id
     * @param stored the rounds there are
     */
    RoundsFile(Predicate<String> isKnown, Rounds stored) {
        this.isKnown = isKnown;
        this.stored = stored;
    }

    static void write(Path file, Map<VisitRound, List<Rounds.Leg>> rounds) throws IOException {
        try (RecordWriter writer = new RecordWriter(file, LAYOUT.known())) {
            rounds.forEach((round, legs) -> legs.forEach(leg -> writer.row(List.of(Cell.escaped(round.id()), Cell.escaped(round.title()),
                    round.forDay().toString(), Cell.escaped(round.madeBy()), round.madeAt().toString(), Cell.escaped(leg.unitId()),
                    Cell.escaped(leg.visitId())))));
        }
    }

    /** All rounds of a file, each with its stops in the order of their rows. */
    Map<VisitRound, List<Rounds.Leg>> read(Path file, Findings findings) throws IOException {
        Sheet.read(file, LAYOUT, findings, this::stop);
        Map<VisitRound, List<Rounds.Leg>> all = new LinkedHashMap<>();
        rounds.forEach((id, round) -> all.put(round, legs.get(id)));
        return all;
    }

    private void stop(Row row) {
        String roundId = row.required("round_id", "name the round");
        String visitId = row.required("visit_id", "give the stop the id that its visit gets");
        String unitId = row.required("unit_id", "name the unit");
        if (!unitId.isEmpty() && !isKnown.test(unitId)) {
            row.problem("unit_id", unitId, "no unit has this id; add it to the units or correct it here");
        }
        row.required("for_day", "write the day of the round, such as 2026-05-11");
        row.required("made_at", "write when it was made, such as 2026-05-10T16:00:00Z");
        Optional<LocalDate> day = row.day("for_day");
        Optional<Instant> at = row.optionalMoment("made_at").map(OffsetDateTime::toInstant);
        once(row, "visit_id", visitId, visitId);
        once(row, "unit_id", unitId, roundId + "\n" + unitId);
        if (row.isSound() && stored.isTaken(visitId, roundId, unitId)) {
            row.problem("visit_id", visitId, "another stop is stored under this id; give this one another");
        }
        if (!row.isSound()) {
            return;
        }
        VisitRound round = new VisitRound(roundId, row.words("title"), day.orElseThrow(), row.words("made_by"),
                at.orElseThrow().truncatedTo(ChronoUnit.MILLIS));
        if (!rounds.computeIfAbsent(roundId, id -> round).equals(round)) {
            row.problem("round_id", roundId, "an earlier row gives this round another title, day or maker; make them the same");
        } else {
            legs.computeIfAbsent(roundId, id -> new ArrayList<>()).add(new Rounds.Leg(unitId, visitId));
        }
    }

    private void once(Row row, String column, String given, String key) {
        Long earlier = given.isEmpty() ? null : rows.putIfAbsent(column + "\n" + key, row.number());
        if (earlier != null) {
            row.problem(column, given, "row " + earlier + " has it already; keep one of the rows");
        }
    }
}
