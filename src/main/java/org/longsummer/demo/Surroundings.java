package org.longsummer.demo;

import java.time.LocalDateTime;
import java.util.Random;

/**
 * What an invented machine stands in while it is read.
 *
 * @param outdoors air away from the roof
 * @param inside what the machine works with
 * @param onGenerator where the power comes from
 */
record Surroundings(Climate.Air outdoors, ForwardModel.Conditions inside, boolean onGenerator) {

    /** A day drawn anew. */
    static Surroundings drawn(Place place, LocalDateTime local, Random chance) {
        Climate.Air outdoors = place.climate().at(local, chance);
        double room = Math.min(86, Math.max(71, 77 + 0.12 * (outdoors.dryBulb() - 86) + 1.6 * chance.nextGaussian()));
        double dewPoint = Math.min(room - 5, 52 + 0.4 * (outdoors.dewPoint() - 52) + 1.5 * chance.nextGaussian());
        double overTheRoof = outdoors.dryBulb() + 2 + chance.nextGaussian();
        return new Surroundings(outdoors, new ForwardModel.Conditions(room, dewPoint, overTheRoof, 117 + 2.5 * chance.nextGaussian()),
                chance.nextInt(12) == 0);
    }

    /** The same day a little later. */
    Surroundings later(Random chance) {
        double warmer = 0.6 * chance.nextGaussian();
        return new Surroundings(new Climate.Air(outdoors.dryBulb() + warmer, outdoors.dewPoint()),
                new ForwardModel.Conditions(inside.returnDryBulb() + 0.8 * chance.nextGaussian(),
                        inside.returnDewPoint() + 0.5 * chance.nextGaussian(), inside.ambient() + warmer,
                        inside.volts() + 0.6 * chance.nextGaussian()), onGenerator);
    }
}
