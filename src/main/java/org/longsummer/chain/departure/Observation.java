package org.longsummer.chain.departure;

import org.longsummer.chain.expectation.Expectation;
import org.longsummer.chain.expectation.Expectation.Influence;
import org.longsummer.chain.learning.FleetSlopes;
import org.longsummer.chain.learning.Known;
import org.longsummer.chain.visit.Readings;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Temperature;
import org.longsummer.science.cooling.RoofUnit;
import org.longsummer.science.uncertainty.Component;

/**
 * A visit's readings as ln(measured / expected of the bare class) by {@link Channel}, with the covariance of what differs anew at
 * every reading.
 *
 * @param values ln ratios; meaningless where not present
 * @param present which channels were read and can be compared
 * @param noise covariance of the readings' own errors
 * @param lnExpected ln of the class's expectation: split in kelvins, amps, rise in kelvins, amps
 */
public record Observation(double[] values, boolean[] present, double[][] noise, double[] lnExpected) {
    /** Rise of a sound unit's condenser air at the rating point (practice: 15 to 20 °F), and reading it at a few uneven points. */
    private static final double RATED_RISE = 10.0;
    private static final double RISE_READING_U = 1.1;
    /** Share of the heat rejected that comes from the room; the rest is the compressor's power. */
    private static final double ROOM_SHARE = 0.76;
    /** Fan and blower motor of a 13,500 Btu/h unit, A: plates say 2.8, running about 2.1 (practice). */
    private static final double FAN_AMPS = 2.1;
    private static final double FAN_ONLY_U = 0.05;
    /** A split below this cannot be put into a logarithm with sense; it is far below any unit that still cools. */
    private static final double LEAST_SPLIT = 0.5;

    /** Compares the readings with the expectation; the fleet's slopes are taken out. */
    public static Observation of(Expectation expectation, Known known) {
        double[] features = UnitBaseline.features(expectation);
        double[] expected = lnExpected(expectation, known.slopes(), features);
        Readings readings = expectation.screening().usable();
        double[] values = new double[Channel.COUNT];
        boolean[] present = new boolean[Channel.COUNT];
        readings.split().ifPresent(split -> set(values, present, Channel.SPLIT, Math.max(split.kelvins(), LEAST_SPLIT), expected));
        readings.amps().ifPresent(amps -> {
            if (!expectation.screening().unit().plate().variableSpeed() && amps.amperes() > 0) {
                set(values, present, Channel.AMPS, amps.amperes(), expected);
            }
        });
        readings.condenserLeaving().ifPresent(leaving -> rise(expectation, leaving, values, present, expected));
        readings.fanOnlyAmps().ifPresent(amps -> {
            if (amps.amperes() > 0.3 && amps.amperes() < 12) {
                set(values, present, Channel.FAN_ONLY, amps.amperes(), expected);
            }
        });
        return new Observation(values, present, noise(expectation, expected), expected);
    }

    private static void set(double[] values, boolean[] present, Channel channel, double measured, double[] expected) {
        values[channel.ordinal()] = Math.log(measured) - expected[channel.ordinal()];
        present[channel.ordinal()] = true;
    }

    private static void rise(Expectation expectation, Temperature leaving, double[] values, boolean[] present, double[] expected) {
        double rise = leaving.kelvins() - expectation.surroundings().condenserAir().kelvins();
        if (rise > 1 && rise < 40) {
            set(values, present, Channel.CONDENSER_RISE, rise, expected);
        }
    }

    private static double[] lnExpected(Expectation expectation, FleetSlopes slopes, double[] features) {
        double[] expected = new double[Channel.COUNT];
        expected[Channel.SPLIT.ordinal()] = expectation.lnSplit() + slopes.onSplit(features);
        expected[Channel.AMPS.ordinal()] = expectation.lnAmps() + slopes.onAmps(features);
        RoofUnit.Response sound = expectation.machine().sound();
        double heat = ROOM_SHARE * sound.capacityRatio() + (1 - ROOM_SHARE) * sound.powerRatio();
        expected[Channel.CONDENSER_RISE.ordinal()] = Math.log(RATED_RISE * heat);
        double size = expectation.screening().unit().plate().nominal().map(CoolingCapacity::btuPerHour).orElse(13_500.0) / 13_500;
        double volts = expectation.screening().unit().plate().ratedVolts().map(v -> v.volts()).orElse(115.0) / 115;
        expected[Channel.FAN_ONLY.ordinal()] = Math.log(FAN_AMPS * Math.sqrt(size) / volts);
        return expected;
    }

    private static double[][] noise(Expectation expectation, double[] expected) {
        double[][] noise = new double[Channel.COUNT][Channel.COUNT];
        int s = Channel.SPLIT.ordinal();
        int a = Channel.AMPS.ordinal();
        for (Influence i : expectation.influences()) {
            if (i.source() == Component.Source.MEASUREMENT) {
                double onSplit = i.onSplit() * i.u();
                double onAmps = i.onAmps() * i.u();
                noise[s][s] += onSplit * onSplit;
                noise[a][a] += onAmps * onAmps;
                noise[s][a] += onSplit * onAmps;
            }
        }
        noise[a][s] = noise[s][a];
        double entering = expectation.surroundings().condenserAirU();
        double rise = Math.exp(expected[Channel.CONDENSER_RISE.ordinal()]);
        int r = Channel.CONDENSER_RISE.ordinal();
        noise[r][r] = (entering * entering + RISE_READING_U * RISE_READING_U) / (rise * rise) + 0.0025;
        int f = Channel.FAN_ONLY.ordinal();
        noise[f][f] = FAN_ONLY_U * FAN_ONLY_U;
        return noise;
    }

    /** Which channels were read. */
    public int[] made() {
        int count = 0;
        for (boolean p : present) {
            count += p ? 1 : 0;
        }
        int[] made = new int[count];
        int k = 0;
        for (int c = 0; c < present.length; c++) {
            if (present[c]) {
                made[k++] = c;
            }
        }
        return made;
    }
}
