package org.longsummer.chain.weighing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Hypothesis;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.outlook.Standing;
import org.longsummer.chain.outlook.TypicalFaults;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Work;
import org.longsummer.evidence.Comparison;
import org.longsummer.evidence.Project;
import org.longsummer.quantity.Money;
import org.longsummer.quantity.Power;

/**
 * One whole case against a second implementation that goes forward through every way in which the year can go:
 * {@code reference/crosscheck/weighing_case.py} and its output beside it.
 */
class WeighingCrossCheckTest {
    private static final Path OUTPUT = Project.REFERENCE.resolve("crosscheck").resolve("weighing_case.csv");
    private static final String SOURCE = "weighing-case";
    private static final LocalDate JUNE = LocalDate.of(2021, 6, 10);

    /** By what and step, as printed. */
    private static final Map<String, Double> SECOND = Project.read(OUTPUT).lines().skip(1).map(line -> line.split(","))
            .collect(Collectors.toMap(cells -> cells[0] + "," + cells[1], cells -> Double.parseDouble(cells[2])));

    private static final Weighing WEIGHING = new Weigher(TypicalFaults.MODEL, LifeCurve.RENTAL, SeasonClock.NORTHERN, PriceLists.RENTAL)
            .weigh(Circumstances.of(new Standing(JUNE, List.of(Hypothesis.sound(0.3), new Hypothesis(0.5, Fault.CAPACITOR, 0.8, 0.6),
                    new Hypothesis(0.2, Fault.CONDENSER_COIL, 0.5, 0.6)), 5, OptionalDouble.of(6), false), new Power(1450)));

    private static double second(String what) {
        return SECOND.get(what + ",");
    }

    @Test
    void seasonsOfRunning() {
        try (Comparison comparison = Comparison.absolute(getClass(), "seasons of running in thirty days", "season", SOURCE, 1e-8)) {
            for (int step = 0; step < 12; step++) {
                LocalDate from = JUNE.plusDays(30L * step);
                comparison.point("step " + step, SeasonClock.NORTHERN.seasonsBetween(from, from.plusDays(30)),
                        SECOND.get("seasons of running," + step));
            }
        }
    }

    /** A line is rounded to the cent; the sum of five of them may be off by five halves. */
    @Test
    void everyLineOfEveryOption() {
        try (Comparison lines = Comparison.absolute(getClass(), "weighing, one line of an option", "USD", SOURCE, 0.0051);
                Comparison sums = Comparison.absolute(getClass(), "weighing, expected cost of an option", "USD", SOURCE, 0.0251);
                Comparison spreads = Comparison.absolute(getClass(), "weighing, spread of an option", "USD", SOURCE, 0.0051)) {
            for (OptionCost cost : WEIGHING.options()) {
                String option = cost.option().word();
                Map.of("now", cost.now(), "energy", cost.energy(), "breakdown", cost.breakdown(), "later work", cost.laterWork(), "afterwards",
                        cost.afterwards()).forEach((line, amount) -> point(lines, option + ": " + line, amount));
                point(sums, option + ": expected", cost.expected());
                point(spreads, option + ": spread", cost.spread());
            }
        }
    }

    /** What the page on the weighing says of this case. */
    @Test
    void keepsAndLooksAgainUnlessSomebodyIsThere() {
        Advice alone = WEIGHING.advice();
        assertEquals(Option.KEEP, alone.option());
        assertEquals(Advice.Timing.LOOK_AGAIN_IN_30_DAYS, alone.timing());
        assertEquals(List.of(Work.CAPACITOR), alone.whenOnSite());
        assertEquals(second("keep: expected") - second("repair: expected"), -alone.runnerUpCostsMore().amount(), 0.0251);
        assertFalse(alone.matters());
    }

    private static void point(Comparison comparison, String what, Money amount) {
        comparison.point(what, amount.amount(), second(what));
    }
}
