package org.longsummer.files;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.FleetProspects;
import org.longsummer.chain.Prospect;
import org.longsummer.chain.UnitProspects;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.departure.ExpectedAmps;
import org.longsummer.chain.departure.ExpectedSplit;
import org.longsummer.chain.outlook.Outlook;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.weighing.Advice;
import org.longsummer.quantity.Decimal;
import org.longsummer.store.PackedFleet;

/** Rows of a {@code verdicts.csv}, as bytes of UTF-8. */
final class VerdictRows implements PackedFleet.Written {
    static final List<String> COLUMNS = List.of("visit_id", "unit_id", "visited_at", "flag", "condition", "p_steady",
            "p_condenser_fouling", "p_evaporator_fouling", "p_refrigerant_loss", "p_compressor_wear", "p_capacitor_weak",
            "p_air_recirculation", "p_other", "p_impact", "expected_split_f", "expected_split_u_f", "expected_amps", "expected_amps_u",
            "limit_on_p10", "limit_on_p50", "limit_on_p90");
    /** Added when prices were given. */
    static final List<String> ADVICE_COLUMNS = List.of("advice", "advice_work", "advice_saving", "advice_p_best");
    private static final int PROBABILITY_DECIMALS = 5;
    private static final int READING_DECIMALS = 3;
    private static final int SAVING_DECIMALS = 2;
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx");

    private final StringWriter text = new StringWriter(1 << 16);
    private final CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).bufferSize(0).build(text);
    private final FleetProspects fleet;
    private final boolean withAdvice;

    /**
     * @param fleet tells what lies ahead
     * @param withAdvice what is worth doing has columns too
     */
    VerdictRows(FleetProspects fleet, boolean withAdvice) {
        this.fleet = fleet;
        this.withAdvice = withAdvice;
    }

    static byte[] header(boolean withAdvice) {
        List<String> names = new ArrayList<>(COLUMNS);
        names.addAll(withAdvice ? ADVICE_COLUMNS : List.of());
        return (String.join(",", names) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public void unit(Unit unit, List<Verdict> verdicts) {
        UnitProspects prospects = fleet.of(unit);
        verdicts.forEach(verdict -> add(prospects.after(verdict)));
    }

    private void add(Prospect prospect) {
        List<String> cells = cells(prospect.verdict());
        addLimit(cells, prospect.limit());
        if (withAdvice) {
            addAdvice(cells, prospect.advice());
        }
        writer.writeRecord(cells);
    }

    @Override
    public byte[] bytes() {
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void addLimit(List<String> cells, Outlook.Limit limit) {
        cells.add(limit.p10().map(LocalDate::toString).orElse(""));
        cells.add(limit.p50().map(LocalDate::toString).orElse(""));
        cells.add(limit.p90().map(LocalDate::toString).orElse(""));
    }

    private static void addAdvice(List<String> cells, Optional<Advice> advice) {
        cells.add(advice.map(a -> a.option().word()).orElse(""));
        cells.add(advice.map(a -> VisitColumns.workWords(a.works())).orElse(""));
        cells.add(advice.map(a -> Decimal.text(a.saving().amount(), SAVING_DECIMALS)).orElse(""));
        cells.add(advice.map(a -> probability(a.bestProbability())).orElse(""));
    }

    private static List<String> cells(Verdict verdict) {
        Visit visit = verdict.visit();
        List<String> cells = new ArrayList<>(COLUMNS.size() + ADVICE_COLUMNS.size());
        cells.add(Cell.escaped(visit.id()));
        cells.add(Cell.escaped(visit.unitId()));
        cells.add(MOMENT.format(visit.at().atOffset(visit.offset())));
        cells.add(verdict.state().word());
        cells.add(verdict.condition().word());
        cells.add(probability(verdict.probabilities().of(Condition.NONE)));
        Condition.six().forEach(condition -> cells.add(probability(verdict.probabilities().of(condition))));
        cells.add(probability(verdict.probabilities().of(Condition.OTHER)));
        cells.add(probability(verdict.probabilityOfImpact()));
        addExpected(cells, verdict);
        return cells;
    }

    private static void addExpected(List<String> cells, Verdict verdict) {
        ExpectedSplit split = verdict.departure().expectedSplit().orElse(null);
        ExpectedAmps amps = verdict.departure().expectedAmps().orElse(null);
        cells.add(split == null ? "" : reading(split.value().fahrenheit()));
        cells.add(split == null ? "" : reading(split.standardUncertainty().fahrenheit()));
        cells.add(amps == null ? "" : reading(amps.value().amperes()));
        cells.add(amps == null ? "" : reading(amps.standardUncertainty().amperes()));
    }

    private static String probability(double probability) {
        return Decimal.text(probability, PROBABILITY_DECIMALS);
    }

    private static String reading(double number) {
        return Decimal.text(number, READING_DECIMALS);
    }
}
