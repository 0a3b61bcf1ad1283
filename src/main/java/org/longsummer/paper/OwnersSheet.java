package org.longsummer.paper;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.UnitAhead;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.condition.Wording;
import org.longsummer.chain.outlook.OutlookWording;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.Advice;
import org.longsummer.chain.weighing.Caution;
import org.longsummer.chain.weighing.Option;
import org.longsummer.chain.weighing.Weighing;
import org.longsummer.chain.weighing.WeighingWording;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.FleetUnit;
import org.longsummer.wire.JudgedView;

/**
 * One page for an owner, in plain words. Days within sentences stand as YYYY-MM-DD, for whoever shows it to write as is usual.
 *
 * @param label what people call the unit
 * @param machine make, model, serial, vehicle and place, with commas between
 * @param checked who checked it and when
 * @param sentence what was found
 * @param readings expected and read; absent when no visit could be judged
 * @param seasons against expected over the seasons
 * @param sections the rest, in order; those with nothing to say are left out
 * @param cautions what can hurt whoever works on it
 */
public record OwnersSheet(String label, String machine, String checked, String sentence, Optional<Picture> readings, Optional<Picture> seasons,
        List<Section> sections, List<String> cautions) {
    /** Stands at the foot of every sheet. */
    public static final String ADVICE_ONLY = "Advice from readings, not an inspection. Local codes, the maker’s manual and licensed practice come first.";
    private static final String NEVER = "No visit yet: what is said here rests on its age alone.";

    /** A heading and its paragraphs. */
    public record Section(String title, List<String> paragraphs) {
        public Section {
            paragraphs = paragraphs.stream().filter(text -> !text.isBlank()).toList();
        }
    }

    /**
     * The sheet of a unit.
     *
     * @param verdicts of the unit with their reasons, in order of time
     */
    public static OwnersSheet of(FleetUnit unit, List<Verdict> verdicts, UnitAhead ahead, UnitSystem system) {
        Optional<Verdict> judged = last(verdicts.stream().filter(verdict -> verdict.state() != State.RETAKE).toList());
        Optional<Verdict> newest = last(verdicts);
        Weighing weighing = ahead.weighing();
        List<Section> sections = List.of(new Section("What was done", done(verdicts, system)),
                new Section("What we recommend", recommended(weighing)),
                new Section("If it waits", waiting(ahead, weighing)),
                new Section("What cannot be told", cannotTell(judged, newest)));
        return new OwnersSheet(unit.unit().label(), machine(unit), newest.map(OwnersSheet::checked).orElse(""),
                judged.or(() -> newest).map(verdict -> Wording.finding(verdict, system)).orElse(NEVER),
                judged.map(verdict -> ReadingsPicture.of(JudgedView.split(verdict.departure(), system), JudgedView.amps(verdict.departure(), system))),
                judged.map(verdict -> SeasonsPicture.of(verdicts)), sections.stream().filter(section -> !section.paragraphs().isEmpty()).toList(),
                Caution.of(weighing.advice().works()).stream().filter(caution -> caution != Caution.LICENCE).map(Caution::text).toList());
    }

    private static String machine(FleetUnit unit) {
        return String.join(", ", List.of((unit.make() + " " + unit.model()).strip(), unit.serial().isEmpty() ? "" : "serial " + unit.serial(),
                unit.vehicle(), unit.roofPosition(), unit.unit().site()).stream().filter(text -> !text.isEmpty()).toList());
    }

    private static String checked(Verdict verdict) {
        String who = verdict.visit().technician();
        return "Checked on " + verdict.visit().localDay() + (who.isEmpty() ? "" : " by " + who) + (verdict.state() == State.RETAKE
                ? "; that reading is to be taken again, and what follows rests on the one before." : ".");
    }

    private static List<String> done(List<Verdict> verdicts, UnitSystem system) {
        Optional<Verdict> compared = last(verdicts.stream().filter(verdict -> verdict.beforeAndAfter().isPresent()).toList());
        if (compared.isPresent()) {
            return List.of("On " + compared.get().visit().localDay() + ": " + Wording.beforeAndAfter(compared.get(), system).orElse(""));
        }
        Optional<Verdict> worked = last(verdicts.stream().filter(verdict -> !verdict.visit().workDone().isEmpty()).toList());
        return worked.map(verdict -> List.of("On " + verdict.visit().localDay() + ": " + WeighingWording.works(verdict.visit().workDone().stream().sorted().toList())
                + ". It was not read again afterwards, so what that changed cannot be told.")).orElse(List.of());
    }

    private static List<String> recommended(Weighing weighing) {
        Advice advice = weighing.advice();
        String price = advice.option() == Option.KEEP ? "" : "The work costs about " + weighing.cost(advice.option()).now().text() + ".";
        String sealed = advice.works().contains(Work.SEALED_SYSTEM) ? "Opening the sealed circuit is seldom worth it, and it needs certified hands." : "";
        return List.of(WeighingWording.sentence(weighing) + (price.isEmpty() ? "" : " " + price), WeighingWording.settling(weighing), sealed);
    }

    private static List<String> waiting(UnitAhead ahead, Weighing weighing) {
        return List.of(ahead.limitInWords(LocalDate::toString), OutlookWording.quitting(ahead.outlook(), ahead.life(), LocalDate::toString));
    }

    private static List<String> cannotTell(Optional<Verdict> judged, Optional<Verdict> newest) {
        List<String> said = new java.util.ArrayList<>(judged.map(Wording::cannotTell).orElse(List.of()));
        Optional<Verdict> verdict = judged.or(() -> newest);
        if (verdict.isPresent() && verdict.get().visit().readings().amps().isEmpty()) {
            said.add("Amps were not read: what shows in amps alone, such as a weak run capacitor, cannot be told.");
        }
        if (judged.isPresent() && judged.get().earlierVisits() == 0) {
            said.add("It was judged once only: a first visit cannot tell what this unit always did from what has changed.");
        }
        return said;
    }

    private static Optional<Verdict> last(List<Verdict> verdicts) {
        return verdicts.isEmpty() ? Optional.empty() : Optional.of(verdicts.get(verdicts.size() - 1));
    }
}
