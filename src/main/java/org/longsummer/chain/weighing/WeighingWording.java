package org.longsummer.chain.weighing;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.Money;

/** Says a weighing in plain words; the same on a server and on a phone. */
public final class WeighingWording {
    /** From here on whole per cent would claim certainty. */
    private static final double CERTAIN = 0.99;

    private WeighingWording() {}

    /** The advice in a sentence or two. */
    public static String sentence(Weighing weighing) {
        Advice advice = weighing.advice();
        if (advice.option() == Option.KEEP) {
            return keeping(weighing);
        }
        String what = capital(works(advice.works())) + " " + advice.timing().phrase() + ".";
        String saving = " It is expected to save " + advice.saving().text() + " against leaving it, over the time looked ahead; "
                + sure(advice.bestProbability()) + " that it is the cheapest choice.";
        return what + saving + waiting(advice);
    }

    private static String keeping(Weighing weighing) {
        Advice advice = weighing.advice();
        StringBuilder text = new StringBuilder("Keep it, and " + advice.timing().phrase() + ".");
        if (advice.notCarried().isPresent()) {
            text.append(" In figures alone to ").append(advice.notCarried().get().word())
                    .append(" would be cheapest, but its history cannot carry that yet.");
        } else if (!advice.matters()) {
            text.append(" The difference to ").append(verb(advice.runnerUp())).append(" does not matter: ")
                    .append(magnitude(advice.runnerUpCostsMore())).append(".");
        } else {
            text.append(" ").append(capital(verb(advice.runnerUp()))).append(" would cost ")
                    .append(magnitude(advice.runnerUpCostsMore())).append(" more than it is expected to save.");
        }
        if (!advice.whenOnSite().isEmpty()) {
            text.append(" When somebody is there anyway: ").append(works(advice.whenOnSite())).append(".");
        }
        return text.toString();
    }

    private static String waiting(Advice advice) {
        return advice.waitingCosts().amount() >= 1
                ? " Waiting 30 days is expected to cost " + advice.waitingCosts().text() + "." : " Waiting a month costs next to nothing.";
    }

    /** Where the advice changes, one sentence a flip. */
    public static List<String> flips(List<Flip> flips, PriceList prices) {
        List<String> sentences = new ArrayList<>();
        for (Flip flip : flips) {
            sentences.add(capital(flip.to().word()) + " wins " + (flip.above() ? "above " : "below ") + value(flip, prices) + ".");
        }
        return sentences;
    }

    private static String value(Flip flip, PriceList prices) {
        double value = flip.value();
        return switch (flip.figure()) {
            case AGE -> "an age of " + Decimal.text(value, 1) + " years";
            case LOST_NIGHTS -> Decimal.text(value, 1) + " nights lost when it quits";
            case COIL_HOURS -> Decimal.text(value, 1) + " hours for cleaning a coil";
            case WEAK_NIGHT_REFUND -> Decimal.text(100 * value, 1) + " % refunded for a night with a weak unit";
            case GENERATOR_SHARE -> Decimal.text(100 * value, 0) + " % of the running on generator";
            case ENERGY_PRICE -> Decimal.text(value, 2) + " " + prices.currency() + " for a kWh";
            default -> Money.of(value, prices.currency()).text() + " for " + flip.figure().phrase();
        };
    }

    /** What reading would decide, its price and its worth; empty when none would. */
    public static String settling(Weighing weighing) {
        return weighing.firstSettle().map(settling -> "Before anything is paid for: " + lower(settling.reading().phrase())
                + ". It costs " + (settling.price().minor() == 0 ? "nothing but a few minutes" : "about " + settling.price().text())
                + " and is worth " + settling.worth().text() + " for the decision.").orElse("");
    }

    /** Probability in words and figures. */
    static String sure(double probability) {
        String words = probability >= 0.95 ? "almost certain" : probability >= 0.75 ? "likely" : probability >= 0.55 ? "more likely than not"
                : probability >= 0.45 ? "as likely as not" : "not certain";
        return words + " (" + (probability > CERTAIN ? "more than 99" : Decimal.text(100 * probability, 0)) + " %)";
    }

    /** Works as a phrase: {@code change the filter and clean the condenser coil}. */
    public static String works(List<Work> works) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < works.size(); i++) {
            text.append(i == 0 ? "" : i == works.size() - 1 ? " and " : ", ").append(phrase(works.get(i)));
        }
        return text.toString();
    }

    private static String phrase(Work work) {
        return switch (work) {
            case FILTER -> "change the filter";
            case EVAPORATOR_COIL -> "clean the evaporator coil";
            case CONDENSER_COIL -> "clean the condenser coil";
            case CAPACITOR -> "replace the run capacitor";
            case DIVIDER -> "seal the divider";
            case FAN_MOTOR -> "replace the fan motor";
            case SEALED_SYSTEM -> "have the sealed circuit repaired";
            case UNIT_REPLACED -> "replace the unit";
        };
    }

    private static String verb(Option option) {
        return switch (option) {
            case KEEP -> "keeping it";
            case CLEAN -> "cleaning";
            case REPAIR -> "repairing";
            case REPLACE -> "replacing";
        };
    }

    private static String magnitude(Money money) {
        return money.minor() < 0 ? new Money(-money.minor(), money.currency()).text() : money.text();
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : (char) (text.charAt(0) - 'a' + 'A') + text.substring(1);
    }

    private static String lower(String text) {
        return text.charAt(0) >= 'A' && text.charAt(0) <= 'Z' ? (char) (text.charAt(0) - 'A' + 'a') + text.substring(1) : text;
    }
}
