package org.longsummer.web;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.UnitAhead;
import org.longsummer.chain.outlook.OutlookWording;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.Advice;
import org.longsummer.chain.weighing.Caution;
import org.longsummer.chain.weighing.Option;
import org.longsummer.chain.weighing.OptionCost;
import org.longsummer.chain.weighing.PriceKey;
import org.longsummer.chain.weighing.Weighing;
import org.longsummer.chain.weighing.WeighingWording;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.Money;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Quotes;
import org.longsummer.wire.Boxes;

/**
 * Keep, clean, repair and replace side by side. Days within sentences stand as YYYY-MM-DD.
 *
 * @param label of the unit
 * @param on the day
 * @param sentence the advice
 * @param option what is advised
 * @param matters the difference to the next option is worth a thought
 * @param undecided why nothing dearer is recommended, and what knowing more is worth; empty when the history carries the answer
 * @param settling what to read before anything is paid for; empty when nothing is worth it
 * @param quitting chance of quitting and what it rests on
 * @param options in the order keep, clean, repair, replace
 * @param flips where the answer changes, as sentences
 * @param assumed what the sums take for granted, as sentences
 * @param cautions where work is proposed
 * @param sealed said of work on the sealed circuit, when an option holds it; else empty
 * @param quote price in hand; absent when there is none
 * @param currency of the price list
 * @param onSite somebody is there anyway
 */
record WeighingView(String label, String on, String sentence, String option, boolean matters, String undecided, String settling, String quitting,
        List<OptionView> options, List<String> flips, List<String> assumed, List<String> cautions, String sealed, Optional<QuoteView> quote,
        String currency, boolean onSite) {

    /**
     * One option.
     *
     * @param works its works in words; empty for keeping
     * @param cheaperThanKeeping expected saving against keeping, negative when dearer
     * @param cures in words and figures; empty for keeping
     */
    record OptionView(String option, String works, List<String> workWords, MoneyView expected, MoneyView spread, MoneyView cheaperThanKeeping,
            List<Part> parts, String cures, String quits, boolean advised) {}

    /** A line of the sum. */
    record Part(String name, MoneyView amount) {}

    record QuoteView(String work, String workText, MoneyView price, String offeredBy, String offeredOn) {}

    static WeighingView of(FleetUnit unit, UnitAhead ahead, Optional<Quotes.InHand> quote) {
        Weighing weighing = ahead.weighing();
        Advice advice = weighing.advice();
        boolean sealed = weighing.options().stream().anyMatch(cost -> cost.works().contains(Work.SEALED_SYSTEM));
        return new WeighingView(unit.unit().label(), ahead.standing().on().toString(), WeighingWording.sentence(weighing), advice.option().word(),
                advice.matters(), undecided(weighing), WeighingWording.settling(weighing),
                "If nothing is done at all: " + OutlookWording.quitting(ahead.outlook(), ahead.life(), Object::toString),
                weighing.options().stream().map(cost -> option(cost, weighing)).toList(), flips(ahead), assumed(unit, ahead),
                Caution.of(allWorks(weighing)).stream().map(Caution::text).toList(), sealed ? Caution.REFRIGERANT.text() : "",
                quote.map(WeighingView::quote), weighing.prices().currency(), weighing.circumstances().somebodyOnSite());
    }

    private static List<Work> allWorks(Weighing weighing) {
        return weighing.options().stream().flatMap(cost -> cost.works().stream()).toList();
    }

    private static OptionView option(OptionCost cost, Weighing weighing) {
        Money saving = weighing.cost(Option.KEEP).expected().minus(cost.expected());
        return new OptionView(cost.option().word(), WeighingWording.works(cost.works()), words(cost.works()), MoneyView.of(cost.expected()),
                MoneyView.of(cost.spread()), MoneyView.of(saving),
                List.of(new Part("now", MoneyView.of(cost.now())), new Part("energy", MoneyView.of(cost.energy())),
                        new Part("quitting in season", MoneyView.of(cost.breakdown())), new Part("work later", MoneyView.of(cost.laterWork())),
                        new Part("what the machine loses in worth, and what runs afterwards", MoneyView.of(cost.afterwards()))),
                cost.option() == Option.KEEP ? "" : percent(cost.cures()), quits(cost, weighing), cost.option() == weighing.advice().option());
    }

    private static String quits(OptionCost cost, Weighing weighing) {
        boolean dead = weighing.circumstances().standing().notCooling() && (cost.option() == Option.KEEP || cost.option() == Option.CLEAN);
        return dead ? "it does not run" : percent(cost.quitsInSeason());
    }

    static List<String> words(Collection<Work> works) {
        return works.stream().map(Boxes::word).toList();
    }

    private static String undecided(Weighing weighing) {
        Optional<Option> notCarried = weighing.advice().notCarried();
        if (notCarried.isEmpty()) {
            return "";
        }
        String worth = weighing.worthOfKnowing().minor() > 0 ? " Knowing for certain what is wrong would be worth at most "
                + weighing.worthOfKnowing().text() + "." : "";
        return "In figures alone to " + notCarried.get().word() + " would be cheapest, but what was read so far cannot carry that: a new unit or an opened "
                + "circuit needs two judged visits, a fault more likely than not, and the cheapest choice in at least half of what is possible."
                + (weighing.firstSettle().isEmpty() ? " No single reading is worth its price yet; another visit is." : "") + worth;
    }

    private static List<String> flips(UnitAhead ahead) {
        List<String> flips = WeighingWording.flips(ahead.flips(), ahead.prices());
        return flips.isEmpty() ? List.of("No single figure changes the answer within sensible limits.") : flips;
    }

    private static List<String> assumed(FleetUnit unit, UnitAhead ahead) {
        String years = Decimal.text(ahead.prices().number(PriceKey.HORIZON_YEARS), 2).replaceAll("\\.?0+$", "");
        String age = ahead.standing().ageYears().isPresent() ? "It is " + Decimal.text(ahead.standing().age(ahead.life()), 1) + " years old."
                : "Its age is not known: " + Decimal.text(ahead.life().assumedAge(), 0) + " years are assumed.";
        String warranty = unit.warrantyUntil().map(day -> day.isBefore(ahead.standing().on()) ? "Its warranty ended on " + day + "."
                : "Until " + day + " the maker’s warranty gives a new unit when the sealed circuit fails; the fitting is paid.")
                .orElse("No warranty is known.");
        return List.of("Looked ahead: " + years + (years.equals("1") ? " year" : " years") + ". Then one decides again.", age, warranty,
                "How long such units live: " + ahead.life().origin().phrase() + ".",
                "All four are weighed over the same possible states of the unit. The spread is one standard deviation, over what is wrong and over whether it quits.");
    }

    private static QuoteView quote(Quotes.InHand quote) {
        return new QuoteView(Boxes.word(quote.quote().work()), WeighingWording.works(List.of(quote.quote().work())), MoneyView.of(quote.quote().price()),
                quote.offeredBy(), quote.offeredOn().map(Object::toString).orElse(""));
    }

    private static String percent(double share) {
        return share < 0.01 ? "less than 1 %" : share > 0.99 ? "more than 99 %" : Decimal.text(100 * share, 0) + " %";
    }
}
