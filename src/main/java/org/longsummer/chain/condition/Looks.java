package org.longsummer.chain.condition;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longsummer.chain.departure.FilterAge;
import org.longsummer.chain.screening.Field;
import org.longsummer.chain.screening.Screening;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Quantity;
import org.longsummer.quantity.Voltage;
import org.longsummer.science.statistics.Normal;

/**
 * How likely what was seen or read beside split and amps is under each fault and severity.
 *
 * <p>Looks are probit curves of severity; all magnitudes are practice or judgement, no published source, save the capacitor's (10 %
 * under its label: replace, room-unit service manual).
 */
final class Looks {
    private static final double LIGHT_FROM = 0.36;
    private static final double HEAVY_FROM = 0.72;
    private static final double LOOK_SPREAD = 0.24;
    /** Share of looks that say nothing: poor light, another opinion of "light". */
    private static final double LAPSE = 0.20;
    private static final double[] LAPSE_SHARES = {0.72, 0.26, 0.02};
    private static final double FILTER_SPREAD = 0.28;
    private static final double FILTER_SPREAD_UNKNOWN_AGE = 0.34;
    /** Room air minus return air of a sound unit, °F: 0 with the spread of two probes and an uneven room. */
    static final double ROOM_SPREAD = 1.3;
    static final double ROOM_PER_SEVERITY = 4;
    static final double CAPACITOR_LOSS = 0.40;
    private static final double CAPACITOR_SPREAD = 0.03;
    private static final double[] USUAL_LABELS = {30, 35, 40, 45, 50, 55, 60};

    private static final double PEAK_UNIT_TO_UNIT = 0.3;
    private static final double PEAK_READING = 0.15;
    private static final double USUAL_VOLTS = 115;

    private static final Set<Fault> DIRT = EnumSet.of(Fault.CONDENSER_COIL, Fault.EVAPORATOR_COIL);

    private final List<Double> microfarads = new ArrayList<>();
    /** ln of earlier start peaks at rated volts. */
    private final List<Double> peaks = new ArrayList<>();
    private FilterAge filterAge = FilterAge.UNKNOWN;

    Looks copy() {
        Looks copy = new Looks();
        copy.microfarads.addAll(microfarads);
        copy.peaks.addAll(peaks);
        copy.filterAge = filterAge;
        return copy;
    }

    /** Time passes. */
    void advance(double seasons) {
        filterAge = filterAge.older(seasons);
    }

    /** Work done: a new filter, another capacitor. */
    void work(Set<Work> done) {
        filterAge = filterAge.after(done);
        if (done.contains(Work.CAPACITOR)) {
            microfarads.clear();
        }
    }

    FilterAge filterAge() {
        return filterAge;
    }

    void remember(Screening screening) {
        Readings readings = screening.usable();
        readings.capacitor().ifPresent(c -> microfarads.add(c.microfarads()));
        readings.startPeak().ifPresent(peak -> peaks.add(lnPeak(readings, screening.unit())));
    }

    /** The looks and side readings of one visit that say something. */
    List<Look> of(Screening screening) {
        Unit unit = screening.unit();
        Visit visit = screening.visit();
        Readings readings = screening.usable();
        List<Look> looks = new ArrayList<>(4);
        if (visit.coil() != CoilLook.NOT_LOOKED) {
            looks.add(new Look(Field.COIL, Optional.empty(), "coils seen " + (visit.coil() == CoilLook.CLEAN ? "clean"
                    : visit.coil() == CoilLook.LIGHT ? "lightly dirty" : "heavily dirty"), DIRT, (fault, s) -> coil(visit.coil(), dirt(fault, s))));
        }
        if (visit.filter() != FilterLook.NOT_LOOKED) {
            looks.add(new Look(Field.FILTER, Optional.empty(), "filter " + (visit.filter() == FilterLook.CLEAN ? "clean"
                    : visit.filter() == FilterLook.DIRTY ? "dirty" : "missing"), EnumSet.of(Fault.FILTER), (fault, s) -> filter(visit.filter(), fault == Fault.FILTER ? s : 0)));
        }
        readings.roomDryBulb().ifPresent(room -> readings.returnDryBulb().ifPresent(back -> {
            double difference = room.minus(back).fahrenheit();
            looks.add(new Look(Field.ROOM_DRY_BULB, Optional.of(room.minus(back)), "room air minus return air", EnumSet.of(Fault.DIVIDER), (fault, s) ->
                    density(difference, fault == Fault.DIVIDER ? ROOM_PER_SEVERITY * s : 0, ROOM_SPREAD)));
        }));
        readings.capacitor().ifPresent(c -> looks.add(new Look(Field.CAPACITOR, Optional.of(c), "run capacitor", EnumSet.of(Fault.CAPACITOR), (fault, s) ->
                capacitor(unit, c.microfarads(), fault == Fault.CAPACITOR ? s : 0))));
        readings.startPeak().ifPresent(peak -> {
            double ln = lnPeak(readings, unit);
            looks.add(new Look(Field.START_PEAK, Optional.of(peak), "start peak", EnumSet.of(Fault.COMPRESSOR, Fault.CAPACITOR), (fault, s) -> peak(unit, ln, fault, s)));
        });
        if (visit.icedCoil()) {
            looks.add(new Look(Field.ICED_COIL, Optional.empty(), "ice on the coil", EnumSet.allOf(Fault.class), Looks::iced));
        }
        return looks;
    }

    static double dirt(Fault fault, double s) {
        return fault == Fault.CONDENSER_COIL || fault == Fault.EVAPORATOR_COIL ? s : 0;
    }

    static double coil(CoilLook look, double dirt) {
        double heavy = Normal.cumulative((dirt - HEAVY_FROM) / LOOK_SPREAD);
        double light = Normal.cumulative((dirt - LIGHT_FROM) / LOOK_SPREAD) - heavy;
        double seen = switch (look) {
            case HEAVY -> heavy;
            case LIGHT -> light;
            default -> 1 - light - heavy;
        };
        int index = look == CoilLook.HEAVY ? 2 : look == CoilLook.LIGHT ? 1 : 0;
        return (1 - LAPSE) * seen + LAPSE * LAPSE_SHARES[index];
    }

    double filter(FilterLook look, double restriction) {
        if (look == FilterLook.MISSING) {
            return restriction > 0 ? 0.005 : 0.015;
        }
        double spread = filterAge.known() ? FILTER_SPREAD : FILTER_SPREAD_UNKNOWN_AGE;
        double dirty = 0.04 + 0.92 * Normal.cumulative((restriction + 0.5 * filterAge.seasons() - 0.45) / spread);
        return look == FilterLook.DIRTY ? dirty : 1 - dirty;
    }

    private double capacitor(Unit unit, double reading, double s) {
        double left = 1 - CAPACITOR_LOSS * Math.min(s, 1.6);
        if (unit.plate().capacitorLabel().isPresent() && unit.plate().capacitorLabel().get().microfarads() > 0) {
            return density(reading / unit.plate().capacitorLabel().get().microfarads(), left, CAPACITOR_SPREAD + 0.1 * (1 - left));
        }
        double sum = 0;
        for (double label : USUAL_LABELS) {
            double prior = labelPrior(label);
            sum += prior * density(reading / label, left, CAPACITOR_SPREAD + 0.1 * (1 - left)) / label * 40;
        }
        return sum;
    }

    /** Which label it has, by the highest reading before: a capacitor only loses. */
    private double labelPrior(double label) {
        if (microfarads.isEmpty()) {
            return 1.0 / USUAL_LABELS.length;
        }
        double highest = 0;
        for (double m : microfarads) {
            highest = Math.max(highest, m);
        }
        return density(highest / label, 1, CAPACITOR_SPREAD) / 12 + 0.002;
    }

    /** Ice comes with too little air or too little refrigerant (practice). */
    private static double iced(Fault fault, double s) {
        if (fault == null) {
            return 0.004;
        }
        double slope = switch (fault) {
            case EVAPORATOR_COIL, FILTER -> 0.25;
            case REFRIGERANT -> 0.25;
            case FAN_DRAG -> 0.10;
            case COMPRESSOR, DIVIDER -> 0.01;
            default -> 0;
        };
        return 0.004 + slope * Math.min(s, 1.2) * Math.min(s, 1.2);
    }

    /** ln of the start peak at rated volts. */
    private static double lnPeak(Readings readings, Unit unit) {
        double rated = unit.plate().ratedVolts().map(Voltage::volts).orElse(USUAL_VOLTS);
        double volts = readings.volts().map(Voltage::volts).orElse(rated);
        return Math.log(Math.max(1, readings.startPeak().get().amperes()) * rated / volts);
    }

    /** A worn compressor starts hard and a weak capacitor starts long: a meter's hold catches more of the peak (practice). */
    private double peak(Unit unit, double ln, Fault fault, double s) {
        double typical = Math.log(unit.plate().softStarter() ? 25 : 40);
        double precision = 1 / (PEAK_UNIT_TO_UNIT * PEAK_UNIT_TO_UNIT);
        double weighted = typical * precision;
        for (double earlier : peaks) {
            precision += 1 / (PEAK_READING * PEAK_READING);
            weighted += earlier / (PEAK_READING * PEAK_READING);
        }
        double spread = Math.sqrt(1 / precision + PEAK_READING * PEAK_READING);
        double effect = fault == Fault.COMPRESSOR ? 0.20 * s : fault == Fault.CAPACITOR ? 0.08 * s : 0;
        return density(ln, weighted / precision + effect, spread);
    }

    private static double density(double x, double mean, double spread) {
        double z = (x - mean) / spread;
        return Math.exp(-0.5 * z * z) / (spread * 2.5066282746310002) + 0.002 / spread;
    }

    /** One look or side reading. */
    static final class Look {
        private final Field field;
        private final Optional<Quantity> seen;
        private final String words;
        private final Set<Fault> tellsOf;
        private final Likelihood likelihood;
        private final double ofSound;

        /**
         * @param field the box
         * @param seen the reading, where it is a number
         * @param words what was seen
         * @param tellsOf the faults under which it is another than in a sound unit
         * @param likelihood of what was seen, by fault (null for none) and severity
         */
        Look(Field field, Optional<Quantity> seen, String words, Set<Fault> tellsOf, Likelihood likelihood) {
            this.field = field;
            this.seen = seen;
            this.words = words;
            this.tellsOf = tellsOf;
            this.likelihood = likelihood;
            this.ofSound = likelihood.of(null, 0);
        }

        Field field() {
            return field;
        }

        Optional<Quantity> seen() {
            return seen;
        }

        String words() {
            return words;
        }

        boolean tellsOf(Fault fault) {
            return tellsOf.contains(fault);
        }

        Likelihood likelihood() {
            return likelihood;
        }

        /** Likelihood in a sound unit. */
        double ofSound() {
            return ofSound;
        }
    }

    /** Probability or density of what was seen. */
    interface Likelihood {
        double of(Fault fault, double severity);
    }
}
