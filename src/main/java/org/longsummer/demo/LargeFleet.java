package org.longsummer.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Invented fleets of any size, to see how everything else holds up; the same each time for the same size. */
public final class LargeFleet {
    private static final int DEPOTS = 60;
    private static final Fault[] FAULTS = Fault.values();

    private LargeFleet() {}

    /**
     * Writes {@code units.csv} and {@code visits.csv}, unit by unit, in little memory.
     *
     * @param directory made when it is not there
     * @param units how many units, from 1 on
     * @param visitsAUnit visits of each over three seasons, give or take work done
     */
    public static void write(Path directory, int units, int visitsAUnit) throws IOException {
        try (FleetFiles files = new FleetFiles(directory)) {
            for (int i = 0; i < units; i++) {
                write(files, i, visitsAUnit);
            }
        }
    }

    private static void write(FleetFiles files, int index, int visits) {
        Random chance = new Random(index * 1_000_003L + 17);
        Place place = place(chance.nextInt(DEPOTS));
        String id = "N%07d".formatted(index + 1);
        Machine machine = Inventory.draw(id, "Wagon " + (index + 1), "Wagon " + (index + 1), "middle", "", place, chance);
        files.unit(machine.unit());
        List<InventedVisit> history = History.of(machine, place, story(chance, visits), DemoFleet.STORED_FIRST_YEAR, chance);
        for (int k = 0; k < Math.min(visits, history.size()); k++) {
            files.visit(id + "-" + (k + 1), history.get(k));
        }
    }

    private static Place place(int number) {
        Place like = List.of(DemoUnits.FERROW_FLATS, DemoUnits.LAKE_ORRIN, DemoUnits.SALTMARCH_POINT).get(number % 3);
        return new Place("Depot %02d".formatted(number + 1), like.altitudeFeet(), like.zone(), like.climate(), like.technicians());
    }

    /** About a third of the machines suffer from something. */
    private static Story story(Random chance, int visits) {
        Fault fault = chance.nextInt(3) == 0 ? FAULTS[1 + chance.nextInt(FAULTS.length - 1)] : Fault.NONE;
        Map<Integer, Slip> slips = chance.nextInt(4) == 0
                ? Map.of(chance.nextInt(Math.max(1, visits)), Slip.values()[chance.nextInt(Slip.values().length)]) : Map.of();
        return new Story(fault, 2.5 * chance.nextDouble(), 0.3 + 0.6 * chance.nextDouble(), List.of(), slips, Story.Kit.FULL,
                (visits + 2) / 3);
    }
}
