package org.longsummer.web;

import java.util.List;
import org.longsummer.chain.UnitAhead;
import org.longsummer.chain.outlook.Outlook;
import org.longsummer.chain.outlook.OutlookWording;
import org.longsummer.chain.weighing.Advice;
import org.longsummer.chain.weighing.Caution;
import org.longsummer.chain.weighing.Weighing;
import org.longsummer.chain.weighing.WeighingWording;

/**
 * What lies ahead of a unit, for its page. Days within sentences stand as YYYY-MM-DD, for the page to write as its reader does.
 *
 * @param on the day on which one looks ahead
 * @param limit when it falls below what its owner can accept, in words
 * @param quitting how likely it quits, and what that rests on
 * @param fan from the last judged visit on; empty without a history
 * @param advice in a sentence or two
 * @param option keep, clean, repair or replace
 * @param works what is advised, as work is named at visits; empty for keeping
 * @param saving expected against keeping
 * @param settling what to read before anything is paid for; empty when nothing is worth it
 * @param cautions where work is proposed
 */
record AheadView(String on, String limit, String quitting, List<FanPoint> fan, String advice, String option, List<String> works, MoneyView saving,
        String settling, List<String> cautions) {

    /** A day of the fan: what split and amps would be against a sound unit's, in percent beyond it, and the share of the way to the limit. */
    record FanPoint(String on, Spread split, Spread amps, Spread limit) {}

    /** 10, 50 and 90 % of the possible courses. */
    record Spread(double low, double middle, double high) {}

    static AheadView of(UnitAhead ahead) {
        Outlook outlook = ahead.outlook();
        Weighing weighing = ahead.weighing();
        Advice advice = weighing.advice();
        return new AheadView(ahead.standing().on().toString(), ahead.limitInWords(Object::toString),
                OutlookWording.quitting(outlook, ahead.life(), Object::toString), ahead.fan().points().stream().map(AheadView::point).toList(),
                WeighingWording.sentence(weighing), advice.option().word(), WeighingView.words(advice.works()), MoneyView.of(advice.saving()),
                WeighingWording.settling(weighing), Caution.of(advice.works()).stream().map(Caution::text).toList());
    }

    private static FanPoint point(Outlook.FanPoint point) {
        return new FanPoint(point.on().toString(), beyond(point.splitRatio()), beyond(point.ampsRatio()), percent(point.shareOfLimit(), 0));
    }

    private static Spread beyond(Outlook.Percentiles ratio) {
        return percent(ratio, 1);
    }

    private static Spread percent(Outlook.Percentiles of, double less) {
        return new Spread(100 * (of.p10() - less), 100 * (of.p50() - less), 100 * (of.p90() - less));
    }
}
