package org.longsummer.chain.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.departure.Departure;
import org.longsummer.chain.screening.Finding;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.Quantity;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * Says a verdict in plain words; the same on a server and on a phone. {@code ±} is the expanded uncertainty, two standard ones
 * (k = 2, about 95 %).
 */
public final class Wording {
    private static final double NOTABLE = 1.5;
    private static final double RUNNER_UP = 0.15;
    private static final double CARRIES_WORK = 0.4;
    private static final double COVERAGE_FACTOR = 2;

    private Wording() {}

    /** The one sentence, or a few short ones, that stand before any number. */
    public static String sentence(Verdict verdict, UnitSystem system) {
        return switch (verdict.state()) {
            case RETAKE -> "These readings cannot be judged. " + verdict.findings().stream().filter(Finding::retake).findFirst()
                    .map(finding -> finding.text(system)).orElse("Read again.");
            case STEADY -> steady(verdict, system);
            case DRIFTING, ACT -> faulty(verdict, system);
        };
    }

    private static String steady(Verdict verdict, UnitSystem system) {
        Departure departure = verdict.departure();
        if (departure.split().isEmpty() && departure.amps().isEmpty()) {
            return "Nothing was read that could be judged.";
        }
        double sound = verdict.probabilities().of(Condition.NONE);
        String notable = notable(departure, system);
        String start = notable.isEmpty() ? "Shows what it should in this weather" : notable + ", by itself too little to call a fault";
        if (sound < 0.5) {
            return start + ". Nothing that was read speaks for a fault, but too little was read to exclude one"
                    + verdict.nextBestReading().map(next -> ": " + lowerFirst(next.kind().phrase()) + ".").orElse(".");
        }
        String end = sound > 0.7 ? "." : "; " + suspicion(verdict) + ". Keep an eye on it.";
        return start + end + (verdict.earlierVisits() == 0 ? " It is the first visit that could be judged, and one visit says little: the next"
                + " ones tell what this unit is like." : "");
    }

    private static String faulty(Verdict verdict, UnitSystem system) {
        return suspected(verdict, system) + " " + remedy(verdict);
    }

    /** The same without what a technician would do: for a page that weighs whether it is worth doing. */
    public static String finding(Verdict verdict, UnitSystem system) {
        return switch (verdict.state()) {
            case RETAKE, STEADY -> sentence(verdict, system);
            case DRIFTING, ACT -> suspected(verdict, system);
        };
    }

    private static String suspected(Verdict verdict, UnitSystem system) {
        if (verdict.condition() == Condition.NOT_COOLING) {
            return "The fan runs and the compressor does not: it is not cooling.";
        }
        String notable = notable(verdict.departure(), system);
        return (notable.isEmpty() ? cost(verdict) : notable) + "; " + suspicion(verdict) + ".";
    }

    /** The departure that stands out most, if one does. */
    private static String notable(Departure departure, UnitSystem system) {
        double split = departure.split().map(Wording::standardised).orElse(0.0);
        double amps = departure.amps().map(Wording::standardised).orElse(0.0);
        if (Math.max(Math.abs(split), Math.abs(amps)) < NOTABLE) {
            return "";
        }
        if (Math.abs(amps) >= Math.abs(split)) {
            double more = departure.expectedAmps().get().value().amperes() * (Math.exp(departure.amps().get().value()) - 1);
            return "Draws " + new Current(Math.abs(more)).text(system) + (more > 0 ? " more" : " less") + " than it should in this weather";
        }
        double wider = departure.expectedSplit().get().value().kelvins() * (Math.exp(departure.split().get().value()) - 1);
        return "Its split is " + new TemperatureDifference(Math.abs(wider)).text(system) + (wider > 0 ? " above" : " below")
                + " what it should be in this weather";
    }

    private static double standardised(Uncertain departure) {
        return departure.value() / departure.standardUncertainty();
    }

    /** What the fault costs by the whole history, when this visit alone does not stand out. */
    private static String cost(Verdict verdict) {
        return verdict.severity().filter(s -> s.capacityLost() > 0.03).map(s -> "By its history it has lost about "
                + Decimal.text(100 * s.capacityLost(), 0) + " % of its cooling")
                .orElseGet(() -> verdict.severity().filter(s -> s.ampsGained() > 0.03).map(s -> "By its history it draws about "
                        + Decimal.text(100 * s.ampsGained(), 0) + " % more than it should").orElse("Its history departs from a sound unit's"));
    }

    private static String suspicion(Verdict verdict) {
        Condition likeliest = verdict.probabilities().likeliestFault();
        double p = verdict.probabilities().of(likeliest);
        String first = "most likely " + phrase(likeliest, verdict) + " (" + probability(p) + ")";
        Optional<Condition> second = runnerUp(verdict, likeliest);
        return second.isEmpty() ? first : first + ", or " + phrase(second.get(), verdict) + " ("
                + Decimal.text(100 * verdict.probabilities().of(second.get()), 0) + " %)";
    }

    private static Optional<Condition> runnerUp(Verdict verdict, Condition likeliest) {
        Condition best = null;
        for (Condition condition : Condition.values()) {
            if (condition != Condition.NONE && condition != likeliest && verdict.probabilities().of(condition) > RUNNER_UP
                    && (best == null || verdict.probabilities().of(condition) > verdict.probabilities().of(best))) {
                best = condition;
            }
        }
        return Optional.ofNullable(best);
    }

    /** The condition in words; filter or coil wherever that can be told. */
    public static String phrase(Condition condition, Verdict verdict) {
        if (condition != Condition.EVAPORATOR_FOULING) {
            return condition.phrase();
        }
        return switch (verdict.evaporatorPart()) {
            case FILTER -> "a blocked filter";
            case COIL -> "a dirty evaporator coil";
            case CANNOT_TELL -> "a dirty filter or evaporator coil";
        };
    }

    /** A probability in words and figures together. */
    public static String probability(double p) {
        String word = p >= 0.95 ? "almost certain" : p >= 0.8 ? "very likely" : p >= 0.6 ? "likely" : p >= 0.4 ? "about even"
                : p >= 0.15 ? "possible" : "unlikely";
        double shown = Math.max(1, Math.min(99, p * 100));
        return word + ", " + Decimal.text(shown, 0) + " %";
    }

    /** What a technician would do against what is seen; nothing costly where the likeliest fault is not likely enough, and empty where none is suspected. */
    public static String remedy(Verdict verdict) {
        if (verdict.state() == State.RETAKE || verdict.state() == State.STEADY) {
            return "";
        }
        if (verdict.condition() != Condition.NOT_COOLING && verdict.probabilities().of(verdict.condition()) < CARRIES_WORK) {
            return "Too unsure for any work but a look at the filter"
                    + verdict.nextBestReading().map(next -> ": " + lowerFirst(next.kind().phrase()) + " first.").orElse(": read again on another day.");
        }
        return switch (verdict.condition()) {
            case CONDENSER_FOULING -> "Clean the condenser coil, let it dry 30 min, read again.";
            case EVAPORATOR_FOULING -> verdict.evaporatorPart() == EvaporatorPart.COIL
                    ? "Clean the evaporator coil, let it dry 30 min, read again." : "Clean or replace the filter first and read again; it is cheap.";
            case REFRIGERANT_LOSS, COMPRESSOR_WEAR -> "Cleaning will not cure it: read again on another day, then plan the repair or"
                    + " replacement; the sealed circuit needs a certified person.";
            case CAPACITOR_WEAK -> "Have the run capacitor measured against its label by a qualified person: isolate, lock and tag,"
                    + " discharge it first.";
            case AIR_RECIRCULATION -> "Look at the divider in the ceiling box and seal it; read room air and return air.";
            case NOT_COOLING -> "Isolate the power first; then have thermostat, run capacitor, overload and wiring checked by a qualified"
                    + " person.";
            case OTHER -> "Something outside the usual six: listen to the fan motor and read the fan-only amps.";
            case NONE -> "";
        };
    }

    private static String lowerFirst(String text) {
        return Character.toLowerCase(text.charAt(0)) + text.substring(1);
    }

    /** What speaks for and against, one sentence each, strongest first. */
    public static List<String> reasons(Verdict verdict, UnitSystem system) {
        return verdict.evidence().stream().map(evidence -> reason(evidence, system)).toList();
    }

    /** One reason: what was seen, against what was expected, and what it speaks for. The visit's day is left to the page. */
    public static String reason(Evidence evidence, UnitSystem system) {
        StringBuilder text = new StringBuilder(evidence.words());
        evidence.seen().ifPresent(seen -> text.append(' ').append(seen.text(system)));
        evidence.expected().ifPresent(expected -> text.append(", expected ").append(expected.text(system))
                .append(evidence.expectedU().map(u -> " ± " + expanded(u).text(system)).orElse("")));
        double times = Math.exp(Math.abs(evidence.weight()));
        String often = times >= 100 ? "more than 100" : Decimal.text(times, times < 3 ? 1 : 0);
        text.append(": speaks ").append(evidence.weight() > 0 ? "for " : "against ").append(evidence.fault().phrase()).append(" (")
                .append(often).append(evidence.weight() > 0 ? " times likelier than in a sound unit)" : " times less likely than in a sound unit)");
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private static Quantity expanded(Quantity standard) {
        if (standard instanceof Current current) {
            return new Current(COVERAGE_FACTOR * current.amperes());
        }
        if (standard instanceof TemperatureDifference difference) {
            return new TemperatureDifference(COVERAGE_FACTOR * difference.kelvins());
        }
        throw new IllegalArgumentException("only amps and temperature differences are expected of a unit, not " + standard);
    }

    /** What cannot be told apart, in full; empty when everything that matters can. */
    public static List<String> cannotTell(Verdict verdict) {
        List<String> all = new ArrayList<>();
        List<Condition> alike = verdict.cannotTell();
        if (verdict.probabilities().of(Condition.NONE) > 0.85) {
            return all;
        }
        if (alike.size() > 1) {
            StringBuilder text = new StringBuilder("Cannot tell ").append(phrase(alike.get(0), verdict));
            for (int i = 1; i < alike.size(); i++) {
                text.append(i == alike.size() - 1 ? " from " : ", ").append(phrase(alike.get(i), verdict));
            }
            all.add(text.append(" by these readings.").toString());
        }
        if (alike.contains(Condition.REFRIGERANT_LOSS) && alike.contains(Condition.COMPRESSOR_WEAR)) {
            all.add("Together: it is losing capacity ("
                    + probability(verdict.probabilities().of(Condition.REFRIGERANT_LOSS)
                            + verdict.probabilities().of(Condition.COMPRESSOR_WEAR)) + ").");
        }
        if (verdict.probabilities().likeliestFault() == Condition.EVAPORATOR_FOULING && verdict.evaporatorPart() == EvaporatorPart.CANNOT_TELL) {
            all.add("Cannot tell the filter from the evaporator coil: look at the filter.");
        }
        return all;
    }

    /** The before-and-after line, where this visit reads again after work. */
    public static Optional<String> beforeAndAfter(Verdict verdict, UnitSystem system) {
        return verdict.beforeAndAfter().map(change -> {
            StringBuilder text = new StringBuilder("Before and after: ");
            change.splitChange().ifPresent(c -> text.append("split ").append(percent(c)));
            change.ampsChange().ifPresent(c -> text.append(change.splitChange().isPresent() ? ", amps " : "amps ").append(percent(c)));
            return text.append(" in the same weather. The work ").append(change.outcome().phrase()).append('.').toString();
        });
    }

    private static String percent(Uncertain change) {
        double value = 100 * (Math.exp(change.value()) - 1);
        double expanded = 100 * COVERAGE_FACTOR * change.standardUncertainty();
        int decimals = expanded < 9.95 ? 1 : 0;
        return (value >= 0 ? "+" : "") + Decimal.text(value, decimals) + " ± " + Decimal.text(expanded, decimals) + " %";
    }
}
