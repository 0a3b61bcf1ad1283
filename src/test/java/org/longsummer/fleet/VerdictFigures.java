package org.longsummer.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;

/**
 * The figures of a verdict, to the last digit.
 *
 * @param state what is to be done
 * @param condition likeliest
 * @param probabilities by condition, and of impact
 * @param expected split, amps and their uncertainties
 */
record VerdictFigures(State state, Condition condition, List<Double> probabilities, List<Double> expected) {

    static Map<String, VerdictFigures> of(Map<String, Verdict> verdicts) {
        Map<String, VerdictFigures> figures = new TreeMap<>();
        verdicts.forEach((id, verdict) -> figures.put(id, of(verdict)));
        return figures;
    }

    static VerdictFigures of(Verdict verdict) {
        List<Double> probabilities = new ArrayList<>();
        for (Condition condition : Condition.values()) {
            probabilities.add(verdict.probabilities().of(condition));
        }
        probabilities.add(verdict.probabilityOfImpact());
        List<Double> expected = new ArrayList<>();
        verdict.departure().expectedSplit().ifPresent(e -> expected.addAll(List.of(e.value().kelvins(), e.standardUncertainty().kelvins())));
        verdict.departure().expectedAmps().ifPresent(e -> expected.addAll(List.of(e.value().amperes(), e.standardUncertainty().amperes())));
        return new VerdictFigures(verdict.state(), verdict.condition(), probabilities, expected);
    }

    /** The largest difference of two verdicts' probabilities, and relative difference of what they expected. */
    double distance(VerdictFigures other) {
        double worst = state == other.state && condition == other.condition && expected.size() == other.expected.size() ? 0 : 1;
        for (int i = 0; i < probabilities.size(); i++) {
            worst = Math.max(worst, Math.abs(probabilities.get(i) - other.probabilities.get(i)));
        }
        for (int i = 0; i < Math.min(expected.size(), other.expected.size()); i++) {
            worst = Math.max(worst, Math.abs(expected.get(i) / other.expected.get(i) - 1));
        }
        return worst;
    }
}
