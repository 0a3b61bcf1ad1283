package org.longsummer.fleet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.UnitLessons;
import org.longsummer.chain.condition.History;
import org.longsummer.chain.condition.LeaveOut;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closer;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Learned;
import org.longsummer.chain.learning.Lesson;
import org.longsummer.chain.screening.Field;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.Visit;
import org.longsummer.evidence.Project;

/**
 * Writes {@code reference/ingredients.md}: what each ingredient buys on the simulated fleet, by leaving it out. Not part of the build's
 * tests; {@code mvn -B test -Dtest=Ingredients} runs it.
 */
class Ingredients {
    private static final String HEAD = """
            # What each ingredient buys

            The simulated fleet of the tests (80 units, three seasons) judged without one ingredient at a time. Made by
            `mvn -B test -Dtest=Ingredients`. AUC: chance that a visit with impact ranks above a fault-free one. Found, named, in time: at
            3 % false alarms. Skill: Brier skill over seven classes. The fleet is small: differences below about 0.01 say nothing, and an
            ingredient that buys nothing here may be what other fleets and measured machines need.

            | left out | AUC | found | found and named | crossings in time | skill | reliability error | split to the sound unit, °F | amps to the sound unit |
            |---|---:|---:|---:|---:|---:|---:|---:|---:|
            """;

    /**
     * One row of the table.
     *
     * @param name what is left out
     * @param blank changes the visits
     * @param notLearned keys of what is learned across units that the judge does not get
     * @param without name of what the histories leave out
     */
    private record Row(String name, UnaryOperator<Visit> blank, String notLearned, String without) {
        static Row of(String name, UnaryOperator<Visit> blank) {
            return new Row(name, blank, "-", "");
        }
    }

    private static final List<Row> ROWS = List.of(
            Row.of("nothing", v -> v),
            new Row("this unit's own baseline", v -> v, "-", "UNIT_BASELINE"),
            new Row("class levels", v -> v, "class/", ""),
            new Row("technicians' instruments", v -> v, "technician/", ""),
            new Row("fleet slopes", v -> v, "slopes", ""),
            new Row("moisture of site and month", v -> v, "moisture/", ""),
            new Row("a share for unrecognised mistakes", v -> v, "-", "MISTAKES"),
            new Row("run-hour clock", v -> v, "-", "RUN_HOUR_CLOCK"),
            new Row("same-day rule", v -> v, "-", "SAME_DAY"),
            new Row("this unit's own scatter", v -> v, "-", "SCATTER"),
            Row.of("looks at filter and coils", Ingredients::withoutLooks),
            box("run capacitor", Field.CAPACITOR),
            box("room air", Field.ROOM_DRY_BULB),
            box("air leaving the condenser", Field.CONDENSER_LEAVING),
            box("fan-only amps", Field.FAN_ONLY_AMPS),
            box("start peak", Field.START_PEAK),
            box("return humidity", Field.RETURN_HUMIDITY),
            box("outdoor humidity and where the outdoor air was read", Field.AMBIENT_HUMIDITY),
            box("volts", Field.VOLTS),
            box("amps", Field.AMPS),
            box("supply air, so the split", Field.SUPPLY_DRY_BULB));

    private static Row box(String name, Field box) {
        return Row.of(name, v -> new Visit(v.id(), v.unitId(), v.at(), v.offset(), v.technician(), v.instruments(),
                without(v.readings(), box), v.fanSpeed(), v.powerSource(), v.filter(), v.coil(), v.icedCoil(), v.workDone(), v.notes()));
    }

    @Test
    void write() {
        SimulatedFleet fleet = SimulatedFleet.dev();
        StringBuilder page = new StringBuilder(HEAD);
        for (Row row : ROWS) {
            SimulatedFleet blanked = fleet.with(row.blank);
            Scoring s = new Scoring(blanked, judged(blanked, row));
            page.append(String.format(Locale.ROOT, "| %s | %.3f | %.2f | %.2f | %.2f | %.2f | %.3f | %.2f | %.2f |%n", row.name, s.area(),
                    s.detected(0.03), s.foundAndNamed(0.03), s.crossingsInTime(0.03), s.brierSkill(), s.reliabilityError(),
                    s.split().rmsToSoundUnit(), s.amps().rmsToSoundUnit()));
        }
        Project.write(Project.REFERENCE.resolve("ingredients.md"), page.toString());
    }

    private static Map<String, Verdict> judged(SimulatedFleet fleet, Row row) {
        Closings closings = learned(fleet, row.notLearned);
        Map<String, Verdict> verdicts = new TreeMap<>();
        fleet.units().forEach((id, unit) -> {
            History history = LeaveOut.history(unit, row.without);
            Visit before = null;
            for (Visit visit : fleet.visits().stream().filter(v -> v.unitId().equals(id)).sorted(Assessment.IN_ORDER).toList()) {
                boolean twin = before != null && visit.isTwinOf(before);
                verdicts.put(visit.id(), (twin ? history.copy() : history).judge(visit, closings));
                if (!twin) {
                    history.workDone(visit);
                }
                before = visit;
            }
        });
        return verdicts;
    }

    /** As the fleet learns, one kind of thing kept from the judge. */
    private static Closings learned(SimulatedFleet fleet, String notLearned) {
        TreeMap<LocalDate, TreeMap<String, List<Visit>>> days = new TreeMap<>();
        fleet.visits().forEach(v -> days.computeIfAbsent(v.utcDay(), day -> new TreeMap<>())
                .computeIfAbsent(v.unitId(), id -> new ArrayList<>()).add(v));
        Closings all = new Closings();
        Closings some = new Closings();
        Map<String, UnitLessons> units = new TreeMap<>();
        days.forEach((day, byUnit) -> {
            List<Lesson> lessons = new ArrayList<>();
            byUnit.forEach((id, visits) -> {
                visits.sort(Assessment.IN_ORDER);
                lessons.addAll(units.computeIfAbsent(id, key -> new UnitLessons(fleet.units().get(key))).learn(visits, all));
            });
            List<Learned> changes = Closer.close(all, day, lessons);
            all.add(day, changes);
            some.add(day, changes.stream().filter(learned -> !learned.key().startsWith(notLearned)).toList());
        });
        return some;
    }

    private static Visit withoutLooks(Visit v) {
        return new Visit(v.id(), v.unitId(), v.at(), v.offset(), v.technician(), v.instruments(), v.readings(), v.fanSpeed(),
                v.powerSource(), FilterLook.NOT_LOOKED, CoilLook.NOT_LOOKED, v.icedCoil(), v.workDone(), v.notes());
    }

    /** The readings with one box left empty. */
    private static Readings without(Readings r, Field box) {
        ReadingsBuilder some = new ReadingsBuilder().supplyAt(r.supplyAt()).ambientAt(box == Field.AMBIENT_HUMIDITY ? AmbientAt.UNKNOWN
                : r.ambientAt());
        copy(r.returnDryBulb(), some::returnDryBulb, box == Field.RETURN_DRY_BULB);
        copy(r.returnMoisture(), some::returnMoisture, box == Field.RETURN_HUMIDITY);
        copy(r.supplyDryBulb(), some::supplyDryBulb, box == Field.SUPPLY_DRY_BULB);
        copy(r.ambientDryBulb(), some::ambientDryBulb, box == Field.AMBIENT_DRY_BULB);
        copy(r.ambientHumidity(), some::ambientHumidity, box == Field.AMBIENT_HUMIDITY);
        copy(r.amps(), some::amps, box == Field.AMPS);
        copy(r.volts(), some::volts, box == Field.VOLTS);
        copy(r.runTime(), some::runTime, box == Field.RUN_TIME);
        copy(r.condenserEntering(), some::condenserEntering, box == Field.CONDENSER_ENTERING);
        copy(r.condenserLeaving(), some::condenserLeaving, box == Field.CONDENSER_LEAVING);
        copy(r.roomDryBulb(), some::roomDryBulb, box == Field.ROOM_DRY_BULB);
        copy(r.fanOnlyAmps(), some::fanOnlyAmps, box == Field.FAN_ONLY_AMPS);
        copy(r.startPeak(), some::startPeak, box == Field.START_PEAK);
        copy(r.capacitor(), some::capacitor, box == Field.CAPACITOR);
        return some.build();
    }

    private static <T> void copy(Optional<T> reading, Consumer<T> into, boolean leftEmpty) {
        if (!leftEmpty) {
            reading.ifPresent(into);
        }
    }
}
