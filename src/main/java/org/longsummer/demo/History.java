package org.longsummer.demo;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** Lets one invented machine live through its story and writes down what its visitors noted. */
final class History {
    static final int SEASONS = 3;
    private static final int FIRST_DAY = 118;
    private static final int SEASON_DAYS = 150;
    private static final int DRYING_MINUTES = 45;

    private final Place place;
    private final Story story;
    private final int firstYear;
    private final Random chance;
    private final Set<Story.Job> done = new HashSet<>();
    private final List<InventedVisit> visits = new ArrayList<>();
    private Machine machine;
    private boolean cured;

    private History(Machine machine, Place place, Story story, int firstYear, Random chance) {
        this.machine = machine;
        this.place = place;
        this.story = story;
        this.firstYear = firstYear;
        this.chance = chance;
    }

    /** All visits of a machine in order of time. */
    static List<InventedVisit> of(Machine machine, Place place, Story story, int firstYear, Random chance) {
        History history = new History(machine, place, story, firstYear, chance);
        for (int season = 0; season < SEASONS; season++) {
            for (int k = 0; k < story.visitsASeason(); k++) {
                history.visit(season, (k + 0.5 + 0.3 * (chance.nextDouble() - 0.5)) / story.visitsASeason());
            }
        }
        return history.visits;
    }

    private void visit(int season, double share) {
        LocalDateTime local = LocalDate.ofYearDay(firstYear + season, FIRST_DAY + (int) (SEASON_DAYS * share))
                .atTime(10 + chance.nextInt(7), chance.nextInt(60));
        Technician technician = place.technicians().get(chance.nextInt(place.technicians().size()));
        double moment = season + share;
        Notebook notebook = new Notebook(machine, story.kit(), technician, season, chance);
        Story.Job job = story.works().stream().filter(work -> work.after() <= moment && !done.contains(work)).findFirst().orElse(null);
        Slip slip = story.slips().get(visits.size());
        Surroundings around = Surroundings.drawn(place, local, chance);
        add(local, notebook.read(around, fault(), severity(moment), slip), job == null ? "none" : job.words());
        if (slip == Slip.SAVED_TWICE) {
            visits.add(visits.get(visits.size() - 1));
        }
        if (job != null) {
            carryOut(job);
            Notebook again = new Notebook(machine, story.kit(), technician, season, chance);
            add(local.plusMinutes(DRYING_MINUTES), again.read(around.later(chance), fault(), severity(moment), null), "none");
        }
    }

    private void carryOut(Story.Job job) {
        done.add(job);
        cured |= job.cures();
        if (job.words().contains("unit_replaced")) {
            machine = Machine.drawn(machine.unit(), machine.ampsAtRating(), chance);
        }
    }

    private void add(LocalDateTime local, Map<String, String> cells, String work) {
        cells.put("unit_id", machine.unit().id());
        cells.put("work_done", work);
        visits.add(new InventedVisit(ZonedDateTime.of(local, place.zone()).toOffsetDateTime(), cells));
    }

    private Fault fault() {
        return cured ? Fault.NONE : story.fault();
    }

    private double severity(double moment) {
        return cured ? 0 : Math.max(0, story.growth() * (moment - story.onset()));
    }
}
