package org.longsummer.chain.weighing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.condition.Fault;
import org.longsummer.chain.condition.Hypothesis;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.outlook.Outlook;
import org.longsummer.chain.outlook.OutlookWording;
import org.longsummer.chain.outlook.Outlooker;
import org.longsummer.chain.outlook.Standing;
import org.longsummer.chain.outlook.TypicalFaults;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Power;

/** Every sentence can be said, names its currency and proposes no work without its caution. */
class WeighingWordingTest {
    private static final LocalDate JUNE = LocalDate.of(2021, 6, 10);
    private static final PriceList EUROS = PriceList.defaults("EUR").with(PriceKey.CALL_OUT, 60);

    private static Weighing weighing(Fault fault, double probability, boolean notCooling) {
        List<Hypothesis> hypotheses = List.of(Hypothesis.sound(1 - probability), new Hypothesis(probability, fault, 1, 0));
        Standing standing = new Standing(JUNE, hypotheses, 4, OptionalDouble.of(7), notCooling);
        return new Weigher(TypicalFaults.MODEL, LifeCurve.RENTAL, SeasonClock.NORTHERN, EUROS).weigh(Circumstances.of(standing, new Power(1400)));
    }

    @Test
    void everyStateHasASentenceInTheReadersCurrency() {
        for (Fault fault : Fault.values()) {
            for (double probability : new double[] {0, 0.3, 0.6, 1}) {
                for (boolean notCooling : new boolean[] {false, true}) {
                    String sentence = WeighingWording.sentence(weighing(fault, probability, notCooling));
                    assertTrue(sentence.endsWith(".") && Character.isUpperCase(sentence.charAt(0)), sentence);
                    assertFalse(sentence.contains("USD") || sentence.contains("--") || sentence.contains("  "), sentence);
                }
            }
        }
    }

    @Test
    void saysWhatToDoWhatItSavesAndHowSureItIs() {
        String sentence = WeighingWording.sentence(weighing(Fault.CAPACITOR, 0.9, false));
        assertTrue(sentence.startsWith("Replace the run capacitor now. It is expected to save "), sentence);
        assertTrue(sentence.contains(" EUR ") && sentence.contains("(90 %)"), sentence);
    }

    @Test
    void worksArePutTogetherAsAPersonWould() {
        assertEquals("", WeighingWording.works(List.of()));
        assertEquals("change the filter", WeighingWording.works(List.of(Work.FILTER)));
        assertEquals("clean the condenser coil, change the filter and seal the divider",
                WeighingWording.works(List.of(Work.CONDENSER_COIL, Work.FILTER, Work.DIVIDER)));
    }

    @Test
    void noWorkIsProposedWithoutItsCaution() {
        for (Work work : Work.values()) {
            assertEquals(Caution.LICENCE, Caution.of(List.of(work)).get(0));
            assertEquals(work != Work.FILTER, Caution.of(List.of(work)).contains(Caution.MAINS), work.name());
        }
        assertTrue(Caution.of(List.of(Work.CAPACITOR)).contains(Caution.CAPACITOR));
        assertTrue(Caution.of(List.of(Work.SEALED_SYSTEM)).contains(Caution.REFRIGERANT));
        assertTrue(Caution.of(List.of()).isEmpty());
    }

    @Test
    void flipsAreSentencesWithTheirUnits() {
        List<String> sentences = WeighingWording.flips(List.of(new Flip(Flip.Figure.AGE, 9.04, true, Option.REPLACE),
                new Flip(Flip.Figure.CALL_OUT, 120.4, false, Option.REPAIR), new Flip(Flip.Figure.ENERGY_PRICE, 0.417, true, Option.CLEAN),
                new Flip(Flip.Figure.GENERATOR_SHARE, 0.4, true, Option.CLEAN)), EUROS);
        assertEquals(List.of("Replace wins above an age of 9.0 years.", "Repair wins below 120 EUR for a call-out.",
                "Clean wins above 0.42 EUR for a kWh.", "Clean wins above 40 % of the running on generator."), sentences);
    }

    @Test
    void anOutlookIsSaidWithTheReadersDatesAndNeverDatesACompressor() {
        Outlooker outlooker = new Outlooker(TypicalFaults.MODEL, LifeCurve.RENTAL, SeasonClock.NORTHERN);
        List<Hypothesis> states = new ArrayList<>(List.of(Hypothesis.sound(1)));
        for (Fault fault : Fault.values()) {
            List.of(0.0, 0.3, 1.2).forEach(severity -> states.add(new Hypothesis(1, fault, severity, 0.6)));
        }
        for (Hypothesis state : states) {
            Outlook outlook = outlooker.outlook(new Standing(JUNE, List.of(state), 4, OptionalDouble.empty(), false));
            String quitting = OutlookWording.quitting(outlook, LifeCurve.RENTAL, day -> "the " + day.getDayOfMonth());
            assertTrue(quitting.contains("the 31") && quitting.contains("nobody can date"), quitting);
            assertTrue(OutlookWording.limit(outlook, day -> "the day").endsWith("."));
        }
        Standing unread = new Standing(JUNE, List.of(), 0, OptionalDouble.of(9), false);
        String age = OutlookWording.quitting(outlooker.outlook(unread), LifeCurve.RENTAL, LocalDate::toString);
        assertTrue(age.contains("From its age alone"), age);
    }
}
