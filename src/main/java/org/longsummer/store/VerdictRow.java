package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.statement.StatementContext;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.Probabilities;
import org.longsummer.chain.condition.Severity;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.departure.Departure;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.science.uncertainty.Uncertain;

/** A verdict as a row. */
final class VerdictRow {
    static final String COLUMNS = """
            visit_id, unit_id, visited_at_ms, state, condition, p_steady, p_condenser_fouling, p_evaporator_fouling, \
            p_refrigerant_loss, p_compressor_wear, p_capacitor_weak, p_air_recirculation, p_other, p_impact, since, \
            expected_split_k, expected_split_u_k, expected_amps_a, expected_amps_u_a, split_departure, split_departure_u, \
            amps_departure, amps_departure_u, capacity_lost, capacity_lost_u, amps_gained, amps_gained_u, closing_day""";
    static final String INSERT = "insert into verdict (" + COLUMNS + ") values ("
            + Arrays.stream(COLUMNS.split(", ")).map(column -> ":" + column).collect(Collectors.joining(", ")) + ")";

    private VerdictRow() {}

    static Rows bind(Rows row, Verdict verdict) {
        row.bind("visit_id", verdict.visit().id()).bind("unit_id", verdict.visit().unitId())
                .bind("visited_at_ms", verdict.visit().at().toEpochMilli())
                .bind("state", verdict.state().word()).bind("condition", verdict.condition().word())
                .bind("p_steady", verdict.probabilities().of(Condition.NONE)).bind("p_impact", verdict.probabilityOfImpact())
                .bind("p_other", verdict.probabilities().of(Condition.OTHER))
                .bind("since", verdict.since().map(LocalDate::toString))
                .bind("closing_day", verdict.closing().map(LocalDate::toString));
        for (Condition condition : Condition.six()) {
            row.bind("p_" + condition.word(), verdict.probabilities().of(condition));
        }
        bindDeparture(row, verdict.departure());
        Optional<Severity> severity = verdict.severity();
        return row.bind("capacity_lost", severity.map(Severity::capacityLost)).bind("capacity_lost_u", severity.map(Severity::capacityLostU))
                .bind("amps_gained", severity.map(Severity::ampsGained)).bind("amps_gained_u", severity.map(Severity::ampsGainedU));
    }

    private static void bindDeparture(Rows row, Departure departure) {
        row.bind("expected_split_k", departure.expectedSplit().map(expected -> expected.value().kelvins()))
                .bind("expected_split_u_k", departure.expectedSplit().map(expected -> expected.standardUncertainty().kelvins()))
                .bind("expected_amps_a", departure.expectedAmps().map(expected -> expected.value().amperes()))
                .bind("expected_amps_u_a", departure.expectedAmps().map(expected -> expected.standardUncertainty().amperes()))
                .bind("split_departure", departure.split().map(Uncertain::value))
                .bind("split_departure_u", departure.split().map(Uncertain::standardUncertainty))
                .bind("amps_departure", departure.amps().map(Uncertain::value))
                .bind("amps_departure_u", departure.amps().map(Uncertain::standardUncertainty));
    }

    static StoredVerdict read(ResultSet row, StatementContext context) throws SQLException {
        return new StoredVerdict(row.getString("visit_id"), row.getString("unit_id"),
                Instant.ofEpochMilli(row.getLong("visited_at_ms")), Column.choice(row, "state", State.class, null),
                Column.choice(row, "condition", Condition.class, null), probabilities(row), row.getDouble("p_impact"),
                Column.day(row, "since"), Column.quantity(row, "expected_split_k", TemperatureDifference::new),
                Column.quantity(row, "expected_split_u_k", TemperatureDifference::new),
                Column.quantity(row, "expected_amps_a", Current::new), Column.quantity(row, "expected_amps_u_a", Current::new),
                uncertain(row, "split_departure"), uncertain(row, "amps_departure"), severity(row), Column.day(row, "closing_day"));
    }

    private static Probabilities probabilities(ResultSet row) throws SQLException {
        double[] weights = new double[Condition.OTHER.ordinal() + 1];
        weights[Condition.NONE.ordinal()] = row.getDouble("p_steady");
        weights[Condition.OTHER.ordinal()] = row.getDouble("p_other");
        for (Condition condition : Condition.six()) {
            weights[condition.ordinal()] = row.getDouble("p_" + condition.word());
        }
        return Probabilities.of(weights);
    }

    private static Optional<Uncertain> uncertain(ResultSet row, String column) throws SQLException {
        double standardUncertainty = row.getDouble(column + "_u");
        return Column.quantity(row, column, value -> new Uncertain(value, standardUncertainty));
    }

    private static Optional<Severity> severity(ResultSet row) throws SQLException {
        double capacityLostU = row.getDouble("capacity_lost_u");
        double ampsGained = row.getDouble("amps_gained");
        double ampsGainedU = row.getDouble("amps_gained_u");
        return Column.quantity(row, "capacity_lost", lost -> new Severity(lost, capacityLostU, ampsGained, ampsGainedU));
    }
}
