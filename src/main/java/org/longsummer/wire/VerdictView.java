package org.longsummer.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.NextBestReading;
import org.longsummer.chain.condition.Severity;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.condition.Wording;
import org.longsummer.chain.screening.Finding;
import org.longsummer.chain.screening.Mistake;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.UnitSystem;

/**
 * A verdict as a page shows it.
 *
 * @param visitId the visit
 * @param state steady, drifting, act or retake
 * @param waiting neither a split nor amps were read yet, so there is only an expectation
 * @param sentence the one sentence that stands before any number
 * @param finding the same without what a technician would do
 * @param remedy what a technician would do against it; whether that pays is for the weighing; empty where no fault is suspected
 * @param condition the likeliest condition on drifting and act, else none
 * @param conditions what is likely, likeliest first, with words and figures
 * @param impact how probable it is that the unit is beyond what an owner can accept
 * @param severity what the fault costs now
 * @param since likeliest day on which it began
 * @param reasons what speaks for and against
 * @param cannotTell what cannot be told apart, in full
 * @param nextBestReading what to read next
 * @param beforeAndAfter what the work changed
 * @param findings what was odd about the readings
 * @param split the split against its expectation
 * @param amps the amps against their expectation
 * @param closing day of the closing of what was learned across units
 */
public record VerdictView(String visitId, String state, boolean waiting, String sentence, String finding, String remedy, String condition, List<ConditionView> conditions,
        String impact, Optional<String> severity, Optional<String> since, List<ReasonView> reasons, List<String> cannotTell,
        Optional<NextView> nextBestReading, Optional<String> beforeAndAfter, List<FindingView> findings, JudgedView split,
        JudgedView amps, Optional<String> closing) {
    /** Below this a condition is not worth a line. */
    private static final double WORTH_A_LINE = 0.02;

    /** A condition with its probability in words and figures. */
    public record ConditionView(String condition, String phrase, double probability, String text) {}

    /** The next best reading; {@code box} is the box to fill, empty when there is none. */
    public record NextView(String text, int minutes, String settles, String box) {}

    /** What speaks for or against, and the visit it comes from, with its day at the place. */
    public record ReasonView(String visitId, String day, String text) {}

    /** A remark on a box; {@code box} is the start of its name, empty for the whole visit. */
    public record FindingView(String box, String label, String text, boolean retake) {}

    public static VerdictView of(Verdict verdict, UnitSystem system) {
        boolean waiting = verdict.findings().stream().anyMatch(finding -> finding.mistake() == Mistake.NOTHING_TO_JUDGE);
        return new VerdictView(verdict.visit().id(), verdict.state().word(), waiting, Wording.sentence(verdict, system),
                Wording.finding(verdict, system), Wording.remedy(verdict), verdict.condition().word(), conditions(verdict), Wording.probability(verdict.probabilityOfImpact()),
                verdict.severity().map(VerdictView::severity), verdict.since().map(Object::toString),
                verdict.evidence().stream().map(reason -> new ReasonView(reason.visitId(), reason.day().toString(),
                        Wording.reason(reason, system))).toList(),
                Wording.cannotTell(verdict), verdict.nextBestReading().map(VerdictView::next),
                Wording.beforeAndAfter(verdict, system),
                verdict.findings().stream().map(finding -> finding(finding, system)).toList(),
                JudgedView.split(verdict.departure(), system), JudgedView.amps(verdict.departure(), system),
                verdict.closing().map(Object::toString));
    }

    public static FindingView finding(Finding finding, UnitSystem system) {
        return new FindingView(finding.field().box(), finding.field().label(), finding.text(system), finding.retake());
    }

    private static List<ConditionView> conditions(Verdict verdict) {
        if (verdict.state() == State.RETAKE || verdict.condition() == Condition.NOT_COOLING) {
            return List.of();
        }
        List<ConditionView> views = new ArrayList<>();
        for (Condition condition : Condition.values()) {
            double probability = verdict.probabilities().of(condition);
            if (probability >= WORTH_A_LINE || condition == Condition.NONE) {
                views.add(new ConditionView(condition.word(), Wording.phrase(condition, verdict), probability,
                        Wording.probability(probability)));
            }
        }
        views.sort((a, b) -> Double.compare(b.probability(), a.probability()));
        return views;
    }

    private static String severity(Severity severity) {
        return "capacity " + share(severity.capacityLost(), severity.capacityLostU(), "less", "more") + ", amps "
                + share(severity.ampsGained(), severity.ampsGainedU(), "more", "less");
    }

    /** In whole per cent, and so never known to better than one. */
    private static String share(double value, double u, String above, String below) {
        return Decimal.text(100 * Math.abs(value), 0) + " ± " + Decimal.text(Math.max(1, 200 * u), 0) + " % " + (value < 0 ? below : above);
    }

    private static NextView next(NextBestReading next) {
        return new NextView(next.kind().phrase(), next.minutes(), next.settles(), next.kind().field().box());
    }
}
