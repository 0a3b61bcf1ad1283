package org.longsummer.chain.learning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.Optional;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * Closes a UTC day: turns what its visits teach across units into new estimates, and says which changed.
 *
 * <p>Each estimate is a normal one, updated by the precision of what came in; residuals are held to three standard deviations, so
 * that one bad reading moves nothing far, and weighted by how surely the unit was sound.
 */
public final class Closer {
    /** Spread of units within a class, ln: split and amps (practice). */
    public static final double UNIT_SPLIT = 0.09;
    public static final double UNIT_AMPS = 0.05;
    /** Spread of classes about their common mean, ln. */
    private static final double CLASS_SPLIT = 0.08;
    private static final double CLASS_AMPS = 0.05;
    /** Half of an instrument's offset is never learned away: instruments drift and are exchanged. */
    private static final double NEVER_LEARNED = 0.5;
    /** Prior of a fleet slope, ln per 10 °F, and how much of each step is taken. */
    private static final double SLOPE_PRIOR = 0.015;
    private static final double SLOPE_GAIN = 0.5;

    /** A day's lessons are taken in an order of their own numbers, so that what units are called changes nothing. */
    private static final Comparator<Lesson> BY_CONTENT = Comparator.comparingDouble(Lesson::lnVapourPressure)
            .thenComparingDouble(Lesson::splitKelvins).thenComparingDouble(Lesson::weight).thenComparingDouble(l -> l.features()[0])
            .thenComparingDouble(l -> l.split().map(Lesson.Residual::value).orElse(0.0))
            .thenComparingDouble(l -> l.amps().map(Lesson.Residual::value).orElse(0.0));

    private final Map<String, Learned> now = new TreeMap<>();
    private final Closings before;
    private final LocalDate day;
    /** The fleet's slopes with this day's lessons, once there was one. */
    private double[] slopes;

    private Closer(Closings before, LocalDate day) {
        this.before = before;
        this.day = day;
    }

    /**
     * What a day's lessons change, in order of keys.
     *
     * @param lessons in any order
     */
    public static List<Learned> close(Closings before, LocalDate day, List<Lesson> lessons) {
        Closer closer = new Closer(before, day);
        List<Lesson> ordered = new ArrayList<>(lessons);
        ordered.sort(BY_CONTENT);
        for (Lesson lesson : ordered) {
            closer.moisture(lesson);
            closer.technician(lesson);
            closer.slopes(lesson);
        }
        closer.putSlopes();
        closer.classes(ordered);
        return new ArrayList<>(closer.now.values());
    }

    private Optional<Learned> current(String key) {
        Learned changed = now.get(key);
        return changed != null ? Optional.of(changed) : before.before(day, key);
    }

    private void put(String key, Double... numbers) {
        now.put(key, new Learned(key, List.of(numbers)));
    }

    private void moisture(Lesson lesson) {
        lesson.moistureKey().ifPresent(key ->
                now.put(key, SiteMoisture.updated(key, current(key).orElse(null), lesson.lnVapourPressure())));
    }

    private void technician(Lesson lesson) {
        lesson.technicianKey().ifPresent(key -> {
            TechnicianOffset was = current(key).map(TechnicianOffset::of).orElse(TechnicianOffset.UNKNOWN);
            double k = lesson.splitKelvins();
            Uncertain split = lesson.split().map(r -> refined(was.split(), TechnicianOffset.UNKNOWN.split(), r.value() * k,
                    r.variance() * k * k, lesson.weight())).orElse(was.split());
            Uncertain amps = lesson.amps().map(r -> refined(was.amps(), TechnicianOffset.UNKNOWN.amps(), r.value(), r.variance(),
                    lesson.weight())).orElse(was.amps());
            put(key, split.value(), split.standardUncertainty(), amps.value(), amps.standardUncertainty());
        });
    }

    /** A scalar Kalman step towards a residual seen about the present estimate. */
    private static Uncertain refined(Uncertain was, Uncertain prior, double residual, double variance, double weight) {
        double floor = prior.standardUncertainty() * prior.standardUncertainty() * NEVER_LEARNED * NEVER_LEARNED;
        double own = Math.max(was.standardUncertainty() * was.standardUncertainty() - floor, 0);
        double total = own + floor + variance / Math.max(weight, 1e-3);
        double gain = own / total;
        double held = held(residual, Math.sqrt(total));
        return new Uncertain(was.value() + gain * held, Math.sqrt(floor + own * (1 - gain)));
    }

    private static double held(double residual, double standardDeviation) {
        double most = 3 * standardDeviation;
        return Math.max(-most, Math.min(most, residual));
    }

    private void slopes(Lesson lesson) {
        if (lesson.weight() < 0.5 || lesson.split().isEmpty() && lesson.amps().isEmpty()) {
            return;
        }
        int n = FleetSlopes.COUNT;
        if (slopes == null) {
            slopes = before.before(day, FleetSlopes.KEY).map(l -> l.numbers().stream().mapToDouble(d -> d).toArray())
                    .orElseGet(() -> priorSlopes(n));
        }
        lesson.split().ifPresent(r -> slopeStep(slopes, 0, 2 * n, lesson.features(), r));
        lesson.amps().ifPresent(r -> slopeStep(slopes, n, 2 * n + n * n, lesson.features(), r));
    }

    private void putSlopes() {
        if (slopes != null) {
            Double[] boxed = new Double[slopes.length];
            for (int i = 0; i < boxed.length; i++) {
                boxed[i] = slopes[i];
            }
            put(FleetSlopes.KEY, boxed);
        }
    }

    private static double[] priorSlopes(int n) {
        double[] numbers = new double[2 * n + 2 * n * n];
        for (int i = 0; i < n; i++) {
            numbers[2 * n + i * n + i] = SLOPE_PRIOR * SLOPE_PRIOR;
            numbers[2 * n + n * n + i * n + i] = SLOPE_PRIOR * SLOPE_PRIOR;
        }
        return numbers;
    }

    /** One recursive least-squares step on the slopes at {@code mean} with their covariance at {@code cov}. */
    private static void slopeStep(double[] numbers, int mean, int cov, double[] x, Lesson.Residual residual) {
        int n = x.length;
        double[] crossed = new double[n];
        double total = residual.variance();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                crossed[i] += numbers[cov + i * n + j] * x[j];
            }
            total += x[i] * crossed[i];
        }
        double held = held(residual.value(), Math.sqrt(total));
        for (int i = 0; i < n; i++) {
            numbers[mean + i] += SLOPE_GAIN * crossed[i] / total * held;
            for (int j = 0; j < n; j++) {
                numbers[cov + i * n + j] -= SLOPE_GAIN * crossed[i] * crossed[j] / total;
            }
        }
    }

    /** First visits add to their class's sums; then all classes share a common mean, each drawn towards it. */
    private void classes(List<Lesson> lessons) {
        boolean changed = false;
        for (Lesson lesson : lessons) {
            if (lesson.classKey().isPresent() && lesson.weight() > 0.3) {
                String key = "sum/" + lesson.classKey().get();
                double[] sums = current(key).map(l -> l.numbers().stream().mapToDouble(d -> d).toArray()).orElse(new double[4]);
                lesson.firstSplit().ifPresent(r -> addFirst(sums, 0, r, UNIT_SPLIT, lesson.weight()));
                lesson.firstAmps().ifPresent(r -> addFirst(sums, 2, r, UNIT_AMPS, lesson.weight()));
                put(key, sums[0], sums[1], sums[2], sums[3]);
                changed = true;
            }
        }
        if (changed) {
            spread();
        }
    }

    private static void addFirst(double[] sums, int at, Lesson.Residual residual, double unitSpread, double weight) {
        double precision = weight / (residual.variance() + unitSpread * unitSpread);
        sums[at] += precision;
        sums[at + 1] += precision * residual.value();
    }

    private void spread() {
        Map<String, Learned> sums = new TreeMap<>();
        for (Learned learned : before.allBefore(day, "sum/")) {
            sums.put(learned.key(), learned);
        }
        now.forEach((key, learned) -> {
            if (key.startsWith("sum/")) {
                sums.put(key, learned);
            }
        });
        Uncertain split = common(sums, 0, ClassLevel.UNSEEN.split(), CLASS_SPLIT);
        Uncertain amps = common(sums, 2, ClassLevel.UNSEEN.amps(), CLASS_AMPS);
        putLevel(ClassLevel.ALL, widened(split, CLASS_SPLIT), widened(amps, CLASS_AMPS));
        sums.forEach((key, learned) -> putLevel(key.substring("sum/".length()), own(learned, 0, split, CLASS_SPLIT),
                own(learned, 2, amps, CLASS_AMPS)));
    }

    private void putLevel(String key, Uncertain split, Uncertain amps) {
        put(key, split.value(), split.standardUncertainty(), amps.value(), amps.standardUncertainty());
    }

    /** Posterior of the mean common to all classes. */
    private static Uncertain common(Map<String, Learned> sums, int at, Uncertain prior, double classSpread) {
        double precision = 1 / (prior.standardUncertainty() * prior.standardUncertainty());
        double weighted = precision * prior.value();
        for (Learned learned : sums.values()) {
            double own = learned.numbers().get(at);
            if (own > 0) {
                double p = 1 / (1 / own + classSpread * classSpread);
                precision += p;
                weighted += p * learned.numbers().get(at + 1) / own;
            }
        }
        return new Uncertain(weighted / precision, 1 / Math.sqrt(precision));
    }

    private static Uncertain widened(Uncertain common, double classSpread) {
        return new Uncertain(common.value(), Math.sqrt(common.standardUncertainty() * common.standardUncertainty() + classSpread * classSpread));
    }

    /** Posterior of one class: its own first visits, and the common mean as their prior. */
    private static Uncertain own(Learned learned, int at, Uncertain common, double classSpread) {
        Uncertain prior = widened(common, classSpread);
        double priorPrecision = 1 / (prior.standardUncertainty() * prior.standardUncertainty());
        double precision = priorPrecision + learned.numbers().get(at);
        return new Uncertain((priorPrecision * prior.value() + learned.numbers().get(at + 1)) / precision, 1 / Math.sqrt(precision));
    }
}
