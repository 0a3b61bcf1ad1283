package org.longsummer.chain.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.departure.Channel;
import org.longsummer.chain.departure.Departure;
import org.longsummer.chain.screening.Field;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Quantity;
import org.longsummer.quantity.TemperatureDifference;

/** Remembers what each reading of each visit said about every fault, so that a verdict can name its reasons. */
final class Trail {
    private static final double WORTH_SAYING = 0.5;
    private static final int MOST = 8;

    private final List<Entry> entries = new ArrayList<>();
    private int turned;

    Trail copy() {
        Trail copy = new Trail();
        copy.entries.addAll(entries);
        copy.turned = turned;
        return copy;
    }

    /** What one visit's readings say, weighed before they move anything. */
    void note(BayesUpdate update, Departure departure) {
        Visit visit = departure.screening().visit();
        for (Channel channel : Channel.values()) {
            if (update.observation.present()[channel.ordinal()]) {
                int c = channel.ordinal();
                double[] weights = weights(update, t -> update.single(t, c), t -> update.singleIfSound(t, c));
                entries.add(entry(visit, channel, weights, departure, update));
            }
        }
        for (Looks.Look look : update.looks) {
            double[] weights = weights(update, t -> look.likelihood().of(t.isSound() ? null : t.fault, t.severity),
                    t -> look.likelihood().of(null, 0));
            entries.add(new Entry(visit, look.field(), weights, look.seen(), Optional.empty(), Optional.empty(), look.words()));
        }
    }

    /** A visit that turned out to be a mistake is no reason for anything. */
    void forget(Visit mistaken) {
        entries.removeIf(entry -> entry.visit.id().equals(mistaken.id()));
    }

    private static Entry entry(Visit visit, Channel channel, double[] weights, Departure departure, BayesUpdate update) {
        Readings readings = visit.readings();
        return switch (channel) {
            case SPLIT -> new Entry(visit, Field.SUPPLY_DRY_BULB, weights, readings.split().map(q -> q),
                    departure.expectedSplit().map(e -> e.value()), departure.expectedSplit().map(e -> e.standardUncertainty()), "split");
            case AMPS -> new Entry(visit, Field.AMPS, weights, readings.amps().map(q -> q), departure.expectedAmps().map(e -> e.value()),
                    departure.expectedAmps().map(e -> e.standardUncertainty()), "amps");
            case CONDENSER_RISE -> {
                double rise = Math.exp(update.observation.values()[2] + update.observation.lnExpected()[2]);
                double expected = Math.exp(update.observation.lnExpected()[2] + update.soundUnit(channel).value());
                yield new Entry(visit, Field.CONDENSER_LEAVING, weights, Optional.of(new TemperatureDifference(rise)),
                        Optional.of(new TemperatureDifference(expected)),
                        Optional.of(new TemperatureDifference(expected * update.soundUnit(channel).standardUncertainty())),
                        "rise of the air through the condenser");
            }
            case FAN_ONLY -> {
                double expected = Math.exp(update.observation.lnExpected()[3] + update.soundUnit(channel).value());
                yield new Entry(visit, Field.FAN_ONLY_AMPS, weights, readings.fanOnlyAmps().map(q -> q),
                        Optional.of(new Current(expected)),
                        Optional.of(new Current(expected * update.soundUnit(channel).standardUncertainty())), "fan-only amps");
            }
        };
    }

    private interface LikelihoodUnder {
        double of(Trajectory trajectory);
    }

    /**
     * By condition: ln of the mean likelihood under it over that of the sound unit. The sound unit is what all histories say it would
     * be like, which is also what the reading is shown against; so there is one to compare with when no sound history is left.
     */
    private static double[] weights(BayesUpdate update, LikelihoodUnder likelihood, LikelihoodUnder ifSound) {
        double[] sum = new double[Condition.OTHER.ordinal() + 1];
        double[] weight = new double[sum.length];
        double sound = 0;
        for (Trajectory t : update.lattice.trajectories()) {
            int c = t.condition().ordinal();
            sum[c] += t.weight * likelihood.of(t);
            weight[c] += t.weight;
            sound += t.weight * ifSound.of(t);
        }
        double[] logs = new double[sum.length];
        for (int c = 1; c < sum.length; c++) {
            double log = weight[c] > 0 ? Math.log(sum[c] / weight[c] + 1e-300) - Math.log(sound + 1e-300) : 0;
            logs[c] = Math.max(-6, Math.min(6, log));
        }
        return logs;
    }

    /** Work was done: what was read before it explains a unit that is steady now no longer. */
    void turn() {
        turned = entries.size();
    }

    /**
     * The strongest reasons for and against one fault, strongest first.
     *
     * @param whole from the whole history, else only since the last work
     */
    List<Evidence> about(Condition fault, boolean whole) {
        List<Evidence> all = new ArrayList<>();
        for (Entry e : entries.subList(whole ? 0 : turned, entries.size())) {
            double weight = e.weights[fault.ordinal()];
            if (Math.abs(weight) >= WORTH_SAYING) {
                all.add(new Evidence(e.visit.id(), e.visit.localDay(), e.field, fault, weight, e.seen, e.expected, e.expectedU, e.words));
            }
        }
        all.sort((a, b) -> Long.compare(rank(b), rank(a)));
        return List.copyOf(all.subList(0, Math.min(MOST, all.size())));
    }

    /** By weight in millionths: what differs in the last digits between machines keeps its order in time. */
    private static long rank(Evidence evidence) {
        return (long) (Math.abs(evidence.weight()) * 1e6 + 0.5);
    }

    private record Entry(Visit visit, Field field, double[] weights, Optional<Quantity> seen, Optional<Quantity> expected,
            Optional<Quantity> expectedU, String words) {}
}
