package org.longsummer.chain.weighing;

import java.util.ArrayList;
import java.util.List;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Hypothesis;
import org.longsummer.chain.condition.NextBestReading.Kind;
import org.longsummer.quantity.Money;

/**
 * What knowing more is worth: the expected cost of the best option now, less that of deciding after a reading, over what the reading may
 * say [raiffa-schlaifer-1961].
 */
final class Settler {
    private static final double MINUTES_PER_HOUR = 60;
    private static final double PENNY = 0.5;

    /**
     * What one reading tells: whether one variant is there. The shares are ours.
     *
     * @param kind the reading
     * @param minutes what it takes
     * @param variant what it shows
     * @param from severity from which it shows
     * @param shows how often it shows what is there
     * @param misleads how often it shows what is not there
     * @param needsCall whether a technician has to come for it
     */
    private record Test(Kind kind, int minutes, Fault fault, double from, double shows, double misleads, boolean needsCall) {
        double positive(Hypothesis state) {
            return state.isOf(fault) && state.severity() >= from ? shows : misleads;
        }
    }

    private static final List<Test> TESTS = List.of(
            new Test(Kind.CAPACITOR, 10, Fault.CAPACITOR, 0.3, 0.95, 0.05, true),
            new Test(Kind.LOOK_AT_COILS, 5, Fault.CONDENSER_COIL, 0.4, 0.85, 0.10, false),
            new Test(Kind.LOOK_AT_FILTER, 2, Fault.FILTER, 0.3, 0.90, 0.10, false),
            new Test(Kind.FAN_ONLY_AMPS, 5, Fault.FAN_DRAG, 0.3, 0.90, 0.05, true),
            new Test(Kind.ROOM_AIR, 3, Fault.DIVIDER, 0.4, 0.85, 0.10, false),
            new Test(Kind.CONDENSER_LEAVING, 8, Fault.CONDENSER_COIL, 0.4, 0.75, 0.20, true));

    private Settler() {}

    static List<Settling> settling(Table table, Circumstances unit, PriceList prices) {
        List<Settling> settling = new ArrayList<>();
        double without = table.cheapest(table.states.weights);
        for (Test test : TESTS) {
            double worth = without - deciding(table, test);
            if (worth > PENNY) {
                double call = test.needsCall() ? table.ledger.callOut() : 0;
                double labour = test.needsCall() || unit.somebodyOnSite()
                        ? test.minutes() / MINUTES_PER_HOUR * prices.number(PriceKey.SHOP_RATE) : 0;
                settling.add(new Settling(test.kind(), Money.of(call + labour, prices.currency()), Money.of(worth, prices.currency())));
            }
        }
        settling.sort((a, b) -> b.worth().minus(b.price()).compareTo(a.worth().minus(a.price())));
        return settling;
    }

    /** Expected cost when the best option is chosen after each outcome. */
    private static double deciding(Table table, Test test) {
        int count = table.states.count();
        double[] positive = new double[count];
        double[] negative = new double[count];
        for (int i = 0; i < count; i++) {
            double likelihood = test.positive(table.states.states.get(i));
            positive[i] = table.states.weights[i] * likelihood;
            negative[i] = table.states.weights[i] * (1 - likelihood);
        }
        return table.cheapest(positive) + table.cheapest(negative);
    }
}
