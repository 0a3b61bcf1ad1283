package org.longsummer.chain.weighing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.condition.NextBestReading;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Hypothesis;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.outlook.Standing;
import org.longsummer.chain.outlook.TypicalFaults;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Money;
import org.longsummer.quantity.Power;
import org.longsummer.science.statistics.Weibull;

class WeigherLawTest {
    private static final LocalDate JUNE = LocalDate.of(2021, 6, 10);
    private static final Power DRAW = new Power(1450);
    private static final List<PriceList> LISTS = List.of(PriceLists.RENTAL, PriceLists.PRIVATE, PriceLists.REMOTE);
    private static final double CENT = 0.011;

    private static Weigher weigher(PriceList prices) {
        return new Weigher(TypicalFaults.MODEL, LifeCurve.RENTAL, SeasonClock.NORTHERN, prices);
    }

    private static Circumstances unit(double age, Hypothesis... hypotheses) {
        return Circumstances.of(new Standing(JUNE, List.of(hypotheses), 5, OptionalDouble.of(age), false), DRAW);
    }

    private static Circumstances suspected(Fault fault, double probability, double severity, double rate) {
        return unit(6, Hypothesis.sound(1 - probability), new Hypothesis(probability, fault, severity, rate));
    }

    private static List<Fault> faults() {
        return List.of(Fault.values());
    }

    private static double cost(Weighing weighing, Option option) {
        return weighing.cost(option).expected().amount();
    }

    @Test
    void theLinesOfEveryOptionAddUpToTheCent() {
        for (PriceList prices : LISTS) {
            for (Fault fault : faults()) {
                for (OptionCost cost : weigher(prices).weigh(suspected(fault, 0.6, 0.7, 0.4)).options()) {
                    assertEquals(cost.expected(), cost.now().plus(cost.energy()).plus(cost.breakdown()).plus(cost.laterWork())
                            .plus(cost.afterwards()));
                }
            }
        }
    }

    @Test
    void cheaperCleaningNeverMakesCleaningWorse() {
        for (PriceList prices : LISTS) {
            for (Fault fault : List.of(Fault.CONDENSER_COIL, Fault.EVAPORATOR_COIL, Fault.FILTER)) {
                double before = Double.NEGATIVE_INFINITY;
                for (double hours = 0; hours <= 3; hours += 0.25) {
                    Weighing weighing = weigher(prices.with(PriceKey.COIL_HOURS, hours)).weigh(suspected(fault, 0.8, 0.9, 0.6));
                    double gain = cost(weighing, Option.CLEAN) - cost(weighing, Option.KEEP);
                    assertTrue(gain >= before - CENT, fault + " at " + hours + " h");
                    before = gain;
                }
            }
        }
    }

    @Test
    void aHealthierUnitNeverMakesReplacingBetter() {
        for (PriceList prices : LISTS) {
            for (Fault fault : faults()) {
                double before = Double.POSITIVE_INFINITY;
                for (double severity = 1.5; severity >= 0; severity -= 0.1) {
                    Weighing weighing = weigher(prices).weigh(suspected(fault, 0.9, severity, 0.3));
                    double gain = cost(weighing, Option.KEEP) - cost(weighing, Option.REPLACE);
                    assertTrue(gain <= before + CENT, fault + " at " + severity);
                    before = gain;
                }
            }
        }
    }

    @Test
    void aLessLikelySealedFaultNeverMakesReplacingBetter() {
        for (PriceList prices : LISTS) {
            for (Fault fault : List.of(Fault.REFRIGERANT, Fault.COMPRESSOR)) {
                double before = Double.POSITIVE_INFINITY;
                for (double probability = 1; probability >= 0; probability -= 0.1) {
                    Weighing weighing = weigher(prices).weigh(suspected(fault, Math.max(0, probability), 0.8, 0.5));
                    double gain = cost(weighing, Option.KEEP) - cost(weighing, Option.REPLACE);
                    assertTrue(gain <= before + CENT, fault + " at " + probability);
                    before = gain;
                }
            }
        }
    }

    @Test
    void anOlderUnitNeverMakesReplacingWorse() {
        double before = Double.NEGATIVE_INFINITY;
        for (double age = 0; age <= 18; age += 1.5) {
            Weighing weighing = weigher(PriceLists.RENTAL).weigh(unit(age, Hypothesis.sound(1)));
            double gain = cost(weighing, Option.KEEP) - cost(weighing, Option.REPLACE);
            assertTrue(gain >= before - CENT, "age " + age);
            before = gain;
        }
    }

    /** No discount, no hazard, nobody looks: what is left is energy over a year of running and the works. */
    @Test
    void withoutDiscountAndHazardItIsPlainSums() {
        LifeCurve forever = new LifeCurve(new Weibull(3, 1e5), LifeCurve.Origin.USER, 0);
        PriceList prices = PriceLists.RENTAL.with(PriceKey.DISCOUNT_RATE, 0).with(PriceKey.LOOKS_PER_SEASON, 0).with(PriceKey.LIFE_USED, 0);
        Weigher weigher = new Weigher(TypicalFaults.MODEL, forever, SeasonClock.NORTHERN, prices);
        Weighing weighing = weigher.weigh(unit(6, Hypothesis.sound(1)));
        double hours = SeasonClock.NORTHERN.runHoursBetween(JUNE, JUNE.plusDays(360));
        double energy = 1.450 * hours * 0.6 * 0.16;
        assertEquals(energy, weighing.cost(Option.KEEP).energy().amount(), CENT);
        assertEquals(energy, cost(weighing, Option.KEEP), 0.05);
        assertEquals(10 + energy, cost(weighing, Option.CLEAN), 0.05);
        assertEquals(90 + 0.5 * 150 + 40 + energy, cost(weighing, Option.REPAIR), 0.05);
        assertEquals(1900 + energy, cost(weighing, Option.REPLACE), 0.05);
        assertEquals(0, weighing.cost(Option.KEEP).spread().minor());
    }

    @Test
    void aGiftOfTheSameMachineCostsTheSameAsKeepingIt() {
        Circumstances brandNew = new Circumstances(new Standing(JUNE, List.of(Hypothesis.sound(1)), 5, OptionalDouble.of(0), false), DRAW,
                Optional.empty(), Optional.of(new Quote(Work.UNIT_REPLACED, Money.zero("USD"))), false);
        for (PriceList prices : LISTS) {
            Weighing weighing = weigher(prices).weigh(brandNew);
            assertEquals(weighing.cost(Option.KEEP).expected(), weighing.cost(Option.REPLACE).expected());
            assertEquals(weighing.cost(Option.KEEP).spread(), weighing.cost(Option.REPLACE).spread());
        }
    }

    @Test
    void freeWorkThatCuresNothingCostsTheSameAsKeeping() {
        PriceList free = PriceLists.RENTAL.with(PriceKey.CALL_OUT, 0).with(PriceKey.CAPACITOR_PART, 0).with(PriceKey.SHOP_RATE, 0);
        Weighing weighing = weigher(free).weigh(unit(6, Hypothesis.sound(1)));
        assertEquals(weighing.cost(Option.KEEP).expected(), weighing.cost(Option.REPAIR).expected());
    }

    @Test
    void cleaningACleanUnitCostsItsPriceAndCuresNothing() {
        Weighing weighing = weigher(PriceLists.RENTAL).weigh(suspected(Fault.COMPRESSOR, 1, 0.8, 0.5));
        OptionCost clean = weighing.cost(Option.CLEAN);
        assertEquals(0, clean.cures(), 0);
        assertEquals(clean.now().amount(), cost(weighing, Option.CLEAN) - cost(weighing, Option.KEEP), 0.05);
    }

    @Test
    void theTwoAlikeFaultsNeedNotBeToldApartToBeWeighed() {
        double refrigerant = cost(weigher(PriceLists.RENTAL).weigh(suspected(Fault.REFRIGERANT, 0.8, 0.9, 0.5)), Option.KEEP);
        double compressor = cost(weigher(PriceLists.RENTAL).weigh(suspected(Fault.COMPRESSOR, 0.8, 0.9, 0.5)), Option.KEEP);
        double either = cost(weigher(PriceLists.RENTAL).weigh(unit(6, Hypothesis.sound(0.2),
                new Hypothesis(0.4, Fault.REFRIGERANT, 0.9, 0.5), new Hypothesis(0.4, Fault.COMPRESSOR, 0.9, 0.5))), Option.KEEP);
        assertEquals((refrigerant + compressor) / 2, either, 0.02);
    }

    @Test
    void theOrderAndTheSplittingOfHypothesesDoNotMatter() {
        Hypothesis fault = new Hypothesis(0.5, Fault.CAPACITOR, 0.7, 0.6);
        Hypothesis half = new Hypothesis(0.25, Fault.CAPACITOR, 0.7, 0.6);
        Weighing one = weigher(PriceLists.RENTAL).weigh(unit(6, Hypothesis.sound(0.5), fault));
        Weighing other = weigher(PriceLists.RENTAL).weigh(unit(6, half, Hypothesis.sound(0.5), half));
        assertEquals(one.options(), other.options());
        assertEquals(one.advice(), other.advice());
    }

    @Test
    void oneCallDoesWhatOneCallCan() {
        PriceList dear = PriceLists.REMOTE.with(PriceKey.WEAK_NIGHT_REFUND, 0.2);
        Weighing weighing = weigher(dear).weigh(unit(6, new Hypothesis(0.4, Fault.CAPACITOR, 1, 0.6),
                new Hypothesis(0.4, Fault.CONDENSER_COIL, 1.2, 0.6), new Hypothesis(0.2, Fault.FILTER, 1, 0.6)));
        List<Work> works = weighing.cost(Option.REPAIR).works();
        assertTrue(works.containsAll(List.of(Work.CAPACITOR, Work.CONDENSER_COIL, Work.FILTER)), works::toString);
        assertEquals(350 + 0.5 * 150 + 40 + 1.5 * 150 + 10, weighing.cost(Option.REPAIR).now().amount(), CENT);
    }

    @Test
    void somebodyOnSiteNeverMakesWorkWorse() {
        for (Fault fault : faults()) {
            Circumstances called = suspected(fault, 0.7, 0.8, 0.5);
            Weighing alone = weigher(PriceLists.REMOTE).weigh(called);
            Weighing there = weigher(PriceLists.REMOTE).weigh(called.withSomebodyOnSite());
            assertEquals(cost(alone, Option.KEEP), cost(there, Option.KEEP), 0);
            assertTrue(cost(there, Option.REPAIR) <= cost(alone, Option.REPAIR));
            assertTrue(cost(there, Option.CLEAN) <= cost(alone, Option.CLEAN));
        }
    }

    @Test
    void adviceIsNotTheSameForAll() {
        Circumstances worn = suspected(Fault.CAPACITOR, 0.9, 0.9, 0.6);
        assertEquals(Option.REPAIR, weigher(PriceLists.RENTAL).advise(worn).option());
        assertEquals(Option.KEEP, weigher(PriceLists.RENTAL).advise(unit(6, Hypothesis.sound(1))).option());
        assertEquals(Option.KEEP, weigher(PriceLists.PRIVATE).advise(suspected(Fault.CONDENSER_COIL, 0.9, 0.8, 0.5)).option());
        assertEquals(Option.CLEAN, weigher(PriceLists.RENTAL).advise(suspected(Fault.FILTER, 0.9, 0.9, 0.6)).option());
        assertEquals(Option.REPLACE, weigher(PriceLists.REMOTE).advise(suspected(Fault.COMPRESSOR, 0.95, 1.2, 0.6)).option());
    }

    @Test
    void aNewUnitIsNotBoughtOnOneVisitsWordNorOnAgeByADefaultCurve() {
        Standing once = new Standing(JUNE, List.of(new Hypothesis(0.95, Fault.COMPRESSOR, 1.2, 0.6), Hypothesis.sound(0.05)), 1,
                OptionalDouble.of(6), false);
        Advice advice = weigher(PriceLists.REMOTE).advise(Circumstances.of(once, DRAW));
        assertFalse(advice.option() == Option.REPLACE);
        assertEquals(Option.REPLACE, advice.notCarried().orElseThrow());
        assertFalse(weigher(PriceLists.REMOTE.with(PriceKey.REPLACEMENT, 200)).advise(unit(25, Hypothesis.sound(1))).option()
                == Option.REPLACE);
    }

    @Test
    void aDeadUnitIsTriedWithAPartWhenThatMayDoAndReplacedWhenItIsGone() {
        Standing suspectedPart = new Standing(JUNE, List.of(new Hypothesis(0.8, Fault.CAPACITOR, 1, 0.6), Hypothesis.sound(0.2)), 5,
                OptionalDouble.of(6), true);
        assertEquals(Option.REPAIR, weigher(PriceLists.RENTAL).advise(Circumstances.of(suspectedPart, DRAW)).option());
        Standing gone = new Standing(JUNE, List.of(new Hypothesis(1, Fault.COMPRESSOR, 1.4, 0.6)), 5, OptionalDouble.of(6), true);
        assertEquals(Option.REPLACE, weigher(PriceLists.RENTAL).advise(Circumstances.of(gone, DRAW)).option());
        Weighing dead = weigher(PriceLists.RENTAL).weigh(Circumstances.of(gone, DRAW));
        assertTrue(cost(dead, Option.KEEP) > cost(dead, Option.REPLACE));
    }

    @Test
    void theWarrantyPaysForAMachineThatFailsWithinIt() {
        Standing worn = new Standing(JUNE, List.of(new Hypothesis(0.9, Fault.COMPRESSOR, 1.2, 0.5), Hypothesis.sound(0.1)), 5,
                OptionalDouble.of(1), false);
        Circumstances covered = new Circumstances(worn, DRAW, Optional.of(JUNE.plusYears(1)), Optional.empty(), false);
        Weigher weigher = weigher(PriceLists.RENTAL);
        assertTrue(cost(weigher.weigh(covered), Option.REPLACE) < cost(weigher.weigh(Circumstances.of(worn, DRAW)), Option.REPLACE) - 500);
        assertEquals(Option.REPLACE, weigher.advise(covered).option());
    }

    @Test
    void knowingIsWorthNothingWhenNothingIsInDoubtAndNoReadingIsWorthMoreThanKnowingAll() {
        assertEquals(0, weigher(PriceLists.RENTAL).weigh(suspected(Fault.CAPACITOR, 1, 1, 0.6)).worthOfKnowing().minor());
        for (PriceList prices : LISTS) {
            for (Fault fault : faults()) {
                Weighing weighing = weigher(prices).weigh(suspected(fault, 0.45, 1, 0.6));
                for (Settling settling : weighing.settling()) {
                    assertTrue(settling.worth().minor() <= weighing.worthOfKnowing().minor() + 1, fault + " " + settling);
                }
            }
        }
    }

    @Test
    void measuringTheCapacitorSettlesADoubtAboutIt() {
        Circumstances there = suspected(Fault.CAPACITOR, 0.3, 1, 0.6).withSomebodyOnSite();
        assertEquals(NextBestReading.Kind.CAPACITOR,
                weigher(PriceLists.RENTAL).weigh(there).firstSettle().orElseThrow().reading());
    }

    @Test
    void adviceHoldsOnThisSideOfAFlipAndNotOnTheOther() {
        Circumstances worn = suspected(Fault.CAPACITOR, 0.7, 0.9, 0.6);
        Weigher weigher = weigher(PriceLists.RENTAL);
        List<Flip> flips = Flipper.flips(weigher, worn);
        assertTrue(flips.stream().anyMatch(flip -> flip.figure() == Flip.Figure.CALL_OUT && flip.above() && flip.to() == Option.KEEP));
        for (Flip flip : flips) {
            if (flip.figure() != Flip.Figure.AGE) {
                double beyond = flip.value() * (flip.above() ? 1.001 : 0.999);
                double before = flip.value() * (flip.above() ? 0.999 : 1.001);
                PriceKey key = flip.figure().key();
                assertEquals(flip.to(), weigher.with(PriceLists.RENTAL.with(key, beyond)).advise(worn).option(), flip::toString);
                assertEquals(Option.REPAIR, weigher.with(PriceLists.RENTAL.with(key, before)).advise(worn).option(), flip::toString);
            }
        }
    }

    @Test
    void waitingCostsNothingForKeepingAndSomethingForADyingPart() {
        assertEquals(0, weigher(PriceLists.RENTAL).advise(unit(6, Hypothesis.sound(1))).waitingCosts().minor());
        assertTrue(weigher(PriceLists.RENTAL).advise(suspected(Fault.CAPACITOR, 0.95, 1, 0.6)).waitingCosts().amount() > 10);
    }

    @Test
    void generatorPowerIsPricedApart() {
        PriceList half = PriceLists.RENTAL.with(PriceKey.GENERATOR_SHARE, 0.5).with(PriceKey.GENERATOR_PRICE, 0.48);
        Money shore = weigher(PriceLists.RENTAL).weigh(unit(6, Hypothesis.sound(1))).cost(Option.KEEP).energy();
        Money both = weigher(half).weigh(unit(6, Hypothesis.sound(1))).cost(Option.KEEP).energy();
        assertEquals(2 * shore.amount(), both.amount(), CENT);
    }
}
