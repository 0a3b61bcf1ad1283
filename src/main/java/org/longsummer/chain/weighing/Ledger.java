package org.longsummer.chain.weighing;

import java.util.Optional;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Hypothesis;
import org.longsummer.chain.outlook.Effects;
import org.longsummer.chain.outlook.FaultModel;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.outlook.QuittingHazard;
import org.longsummer.chain.visit.Work;
import org.longsummer.science.economics.PresentValue;

/** What things cost one unit over the calendar ahead: energy, nights, breakdowns, works, and what a machine is still worth. */
final class Ledger {
    /** A weak unit runs longer for the same comfort, up to this: on hot days it runs all the time anyway. Ours. */
    private static final double LONGEST_RUNNING = 1.25;
    /** Loss of capacity beyond the limit at which every night is a weak one. Ours. */
    private static final double WEAK_SPAN = 0.10;
    /** Chance that somebody who reads the unit finds what is wrong with it. Ours. */
    private static final double LOOK_FINDS = 0.5;

    final Calendar calendar;
    final FaultModel model;
    final double age;
    final double replacement;
    final double emergency;
    /** Chance within each step that a fault is found. */
    final double[] found;
    /** Worth of what a new machine put in at each step costs until the horizon, its value then taken off. */
    final double[] renewed;
    private final LifeCurve life;
    private final PriceList prices;
    private final Circumstances unit;
    private final double[] soundEnergy;
    /** Price of a night, and of a weak one, times the nights in use of a step. */
    private final double[] weakNights;
    /** A new unit in each step and at the horizon. */
    private final double[] newUnit;
    /** Price of undoing each fault by a call of its own. */
    private final double[] remedies = new double[Fault.COUNT];
    private final double sealedNow;
    private final double otherwiseNow;
    private final double lifeUsed;
    private final double discountRate;
    private final double wholeLife;

    Ledger(Circumstances unit, Calendar calendar, FaultModel model, LifeCurve life, PriceList prices) {
        this.unit = unit;
        this.calendar = calendar;
        this.model = model;
        this.life = life;
        this.prices = prices;
        age = unit.standing().age(life);
        replacement = prices.number(PriceKey.REPLACEMENT);
        emergency = prices.number(PriceKey.EMERGENCY_PREMIUM)
                + prices.number(PriceKey.LOST_NIGHTS) * prices.number(PriceKey.NIGHT_PRICE);
        lifeUsed = prices.number(PriceKey.LIFE_USED);
        discountRate = prices.number(PriceKey.DISCOUNT_RATE);
        wholeLife = PresentValue.ofUniform(discountRate, life.years().medianResidual(0));
        soundEnergy = soundEnergy();
        weakNights = new double[calendar.steps];
        found = new double[calendar.steps];
        newUnit = new double[calendar.steps + 1];
        renewed = new double[calendar.steps + 1];
        fillSteps();
        sealedNow = replacementNow(newUnit[0]);
        otherwiseNow = replacementNow(replacement);
        for (Fault fault : Fault.values()) {
            remedies[fault.ordinal()] = fault.isSealed() ? 0 : planned(Remedy.against(fault));
        }
        for (int k = calendar.steps; k >= 0; k--) {
            renewed[k] = renewed(k);
        }
    }

    private void fillSteps() {
        double refund = prices.number(PriceKey.NIGHT_PRICE) * prices.number(PriceKey.WEAK_NIGHT_REFUND);
        for (int k = 0; k < calendar.steps; k++) {
            found[k] = QuittingHazard.share(LOOK_FINDS * prices.number(PriceKey.LOOKS_PER_SEASON) * calendar.seasons[k]);
            weakNights[k] = calendar.openDays[k] * prices.number(PriceKey.OCCUPANCY) * refund;
        }
        for (int k = 0; k <= calendar.steps; k++) {
            newUnit[k] = replacementAt(k);
        }
    }

    private double[] soundEnergy() {
        double generator = prices.number(PriceKey.GENERATOR_SHARE);
        double price = (1 - generator) * prices.number(PriceKey.ENERGY_PRICE) + generator * prices.number(PriceKey.GENERATOR_PRICE);
        double[] energy = new double[calendar.steps];
        for (int k = 0; k < energy.length; k++) {
            energy[k] = unit.soundDraw().kilowatts() * calendar.runHours[k] * prices.number(PriceKey.OCCUPANCY) * price;
        }
        return energy;
    }

    /** Energy and nights given back in a step at a severity. */
    double running(int k, Effects effects, double severity) {
        double capacity = effects.capacity(severity);
        double longer = Math.min(LONGEST_RUNNING, 1 / capacity);
        double weak = Math.max(0, Math.min(1, (Effects.LEAST_CAPACITY - capacity) / WEAK_SPAN));
        return soundEnergy[k] * effects.amps(severity) * longer + weakNights[k] * weak;
    }

    /** Bill of a unit that quits of its fault in a step: the emergency, and the fault's own remedy or a new unit. */
    double breakdown(int k, Fault fault) {
        return emergency + remedied(k, fault);
    }

    /** Bill of a unit that dies of age in a step. */
    double death(int k) {
        return emergency + newUnit[k];
    }

    /** A new unit in a step: the list's price, or its fitting alone while the warranty gives the unit. */
    private double replacementAt(int k) {
        boolean given = unit.warrantyUntil().isPresent() && !calendar.startOf(k).isAfter(unit.warrantyUntil().get());
        double fitting = prices.number(PriceKey.CALL_OUT) + prices.number(PriceKey.REPLACEMENT_HOURS) * prices.number(PriceKey.SHOP_RATE);
        return given ? Math.min(replacement, fitting) : replacement;
    }

    /** A new unit now, by a quote in hand where there is one, less what the old one brings; the warranty gives one for a sealed fault. */
    double replacementNow(Hypothesis state) {
        return state.isSealed() ? sealedNow : otherwiseNow;
    }

    private double replacementNow(double listed) {
        double quoted = quoted(Work.UNIT_REPLACED).orElse(replacement);
        return (listed < replacement ? Math.min(listed, quoted) : quoted) - prices.number(PriceKey.SALVAGE);
    }

    /** A work by a call of its own at a later time. */
    private double planned(Remedy remedy) {
        return remedy.price(prices) + (remedy.needsCall() ? prices.number(PriceKey.CALL_OUT) : 0);
    }

    /** What undoing a fault costs: its work, or a new unit where the sealed circuit is gone. */
    double remedied(int k, Fault fault) {
        return fault.isSealed() ? newUnit[k] : remedies[fault.ordinal()];
    }

    Optional<Double> quoted(Work work) {
        return unit.quote().isPresent() && unit.quote().get().work() == work
                ? Optional.of(unit.quote().get().price().amount()) : Optional.empty();
    }

    double price(Remedy remedy) {
        return remedy.price(prices);
    }

    double callOut() {
        return unit.somebodyOnSite() ? 0 : prices.number(PriceKey.CALL_OUT);
    }

    /** A saving that is worth a thought; of a cheap work, what it costs. */
    double material(Bundle bundle) {
        double material = prices.number(PriceKey.MATERIAL_SAVING);
        return bundle.price() > 0 ? Math.min(material, bundle.price()) : material;
    }

    /** Cumulative hazard of ageing without a sign within each step, of a machine of an age at the calendar's start. */
    double[] ageing(double ageAtStart) {
        double[] hazards = new double[calendar.steps];
        for (int k = 0; k < hazards.length; k++) {
            hazards[k] = QuittingHazard.withoutSign(life, ageAtStart + calendar.elapsed[k], calendar.seasons[k]);
        }
        return hazards;
    }

    /**
     * Value of a sound machine of an age: its price shared out evenly over its life, of what is left the part that will be used.
     */
    double value(double ageYears) {
        return lifeUsed * replacement * PresentValue.ofUniform(discountRate, life.years().medianResidual(ageYears)) / wholeLife;
    }

    /** The same of a machine with a fault: less what the fault asks for, or gone with the sealed circuit. */
    double value(double sound, Fault fault, double severity) {
        double worse = Math.min(1, severity);
        return fault.isSealed() ? sound * (1 - worse) : Math.max(0, sound - worse * remedies[fault.ordinal()]);
    }

    /** What the machine would be worth today if it were sound: all options start from it, so that what they lose of it is a cost. */
    double worthToday() {
        return value(age);
    }

    /** By step: the nights of the season without cooling from then on, and a new unit at its end. */
    double[] idle(int seasonEnd) {
        int end = Math.min(seasonEnd, calendar.steps);
        double[] bills = new double[calendar.steps + 1];
        double bill = replacement;
        for (int k = end - 1; k >= 0; k--) {
            double nights = calendar.openDays[k] * prices.number(PriceKey.OCCUPANCY) * prices.number(PriceKey.NIGHT_PRICE);
            bill = calendar.perHalfStep * nights + calendar.perStep * bill;
            bills[k] = bill;
        }
        for (int k = end; k < bills.length; k++) {
            bills[k] = replacement;
        }
        return bills;
    }

    private double renewed(int from) {
        double worth = 1;
        double sum = 0;
        for (int k = from; k < calendar.steps; k++) {
            sum += worth * calendar.perHalfStep * soundEnergy[k];
            worth *= calendar.perStep;
        }
        return sum - worth * value(calendar.elapsed[calendar.steps] - calendar.elapsed[from]);
    }
}
