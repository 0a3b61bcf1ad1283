package org.longsummer.chain.departure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.learning.ClassLevel;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Lesson;
import org.longsummer.chain.learning.SiteMoisture;
import org.longsummer.chain.learning.TechnicianOffset;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.VisitSketch;
import org.longsummer.chain.visit.Work;

/** What the visits of one unit teach about all of its kind. */
class SoundHistoryLawTest {
    private static final Unit UNIT = VisitSketch.unit("L1");
    private static final LocalDateTime MAY = LocalDateTime.of(2025, 5, 5, 12, 0);

    private final SoundHistory history = new SoundHistory(UNIT);
    private int count;

    private VisitSketch sketch(double lnSplit, double lnAmps) {
        return new VisitSketch().at(MAY.plusDays(7L * (count + 1))).asExpected(UNIT, lnSplit, lnAmps);
    }

    private Lesson learn(VisitSketch sketch) {
        count++;
        return history.learn(sketch.at(MAY.plusDays(7L * count)).visit("l" + count, UNIT), new Closings());
    }

    @Test
    void aUnitsFirstVisitTellsOfItsClassAndLaterOnesOfItselfUntilItIsReplaced() {
        Lesson first = learn(sketch(0.1, -0.05));
        assertEquals(Optional.of(ClassLevel.key(UNIT)), first.classKey());
        assertEquals(0.1 - FilterAge.UNKNOWN.lnSplit(), first.firstSplit().orElseThrow().value(), 1e-9, "apart from what a filter's age does");
        assertEquals(-0.05 - FilterAge.UNKNOWN.lnAmps(), first.firstAmps().orElseThrow().value(), 1e-9);
        Lesson second = learn(sketch(0.1, -0.05).then(Work.UNIT_REPLACED));
        assertTrue(second.classKey().isEmpty() && second.firstSplit().isEmpty() && second.firstAmps().isEmpty());
        Lesson ofTheNew = learn(sketch(0, 0));
        assertTrue(ofTheNew.classKey().isPresent() && ofTheNew.firstSplit().isPresent() && ofTheNew.firstAmps().isPresent());
    }

    @Test
    void whatAUnitIsUsedToSurprisesLessAndLess() {
        double before = 1;
        for (int i = 0; i < 5; i++) {
            Lesson lesson = learn(sketch(0.12, -0.06));
            double surprise = Math.abs(lesson.split().orElseThrow().value());
            assertTrue(surprise < before, i + ": " + before + " then " + surprise);
            assertTrue(Math.signum(lesson.amps().orElseThrow().value()) < 0, "the amps lie below the class");
            before = surprise;
        }
        assertTrue(before < 0.03, "" + before);
    }

    @Test
    void aVisitFarFromAllExpectationHardlyCounts() {
        learn(sketch(0, 0));
        learn(sketch(0, 0));
        assertEquals(1, learn(sketch(0, 0)).weight(), 0);
        double off = learn(sketch(-0.5, 0)).weight();
        assertTrue(off > 0 && off < 0.5, "" + off);
        double amps = learn(sketch(0, 0.4)).weight();
        assertTrue(amps > 0 && amps < 0.5, "the worse of the two decides: " + amps);
    }

    /** A pulled fault does not become the unit's own way: what hardly counts moves little. */
    @Test
    void aVisitThatHardlyCountsMovesLittle() {
        for (int i = 0; i < 3; i++) {
            learn(sketch(0, 0));
        }
        double usual = learn(sketch(0, 0)).split().orElseThrow().value();
        learn(sketch(-0.6, 0));
        double after = learn(sketch(0, 0)).split().orElseThrow().value();
        assertTrue(Math.abs(after - usual) < 0.05, usual + " then " + after);
    }

    @Test
    void onlyWhatWasReadTeaches() {
        Lesson unread = learn(sketch(0, 0).split(VisitSketch.NOT_READ).returnAir(77, VisitSketch.NOT_READ));
        assertTrue(unread.split().isEmpty() && unread.firstSplit().isEmpty() && unread.amps().isPresent() && unread.moistureKey().isEmpty());
        Lesson whole = learn(sketch(0, 0));
        assertEquals(Optional.of(SiteMoisture.key(UNIT.site(), 5)), whole.moistureKey());
        Visit signed = new VisitSketch().at(MAY).visit("s", UNIT);
        assertEquals(Optional.of(TechnicianOffset.key(signed)), whole.technicianKey());
        assertTrue(learn(sketch(0, 0).by("")).technicianKey().isEmpty());
    }

    /** Ice on the coil, or a compressor that does not run: of the machine nothing is learned, of the air it is. A mistake teaches neither. */
    @Test
    void whatIsNoSoundUnitTeachesTheAirAlone() {
        Lesson iced = learn(sketch(0, 0).iced());
        Lesson off = learn(new VisitSketch().split(0.5).amps(2.2));
        for (Lesson lesson : new Lesson[] {iced, off}) {
            assertEquals(0, lesson.weight(), 0);
            assertTrue(lesson.classKey().isEmpty() && lesson.split().isEmpty() && lesson.amps().isEmpty());
            assertTrue(lesson.moistureKey().isPresent());
        }
        Lesson mistake = learn(new VisitSketch().split(-20));
        assertTrue(mistake.weight() == 0 && mistake.moistureKey().isEmpty(), "supply and return exchanged");
    }
}
