package org.longsummer.chain.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.longsummer.chain.outlook.Standing;

/** Finds, for one figure after the other, the nearest values below and above its own at which the advice changes. */
public final class Flipper {
    /** Values tried on each side before the change is narrowed down. */
    private static final int TRIED = 12;
    private static final int HALVINGS = 30;

    private Flipper() {}

    /** The flips of every figure, in their order; a figure that changes nothing within its range has none. */
    public static List<Flip> flips(Weigher weigher, Circumstances unit) {
        Option now = weigher.advise(unit).option();
        List<Flip> flips = new ArrayList<>();
        for (Flip.Figure figure : Flip.Figure.values()) {
            boolean moves = figure != Flip.Figure.AGE || unit.standing().ageYears().isPresent();
            if (moves) {
                side(weigher, unit, figure, now, false).ifPresent(flips::add);
                side(weigher, unit, figure, now, true).ifPresent(flips::add);
            }
        }
        return flips;
    }

    private static Optional<Flip> side(Weigher weigher, Circumstances unit, Flip.Figure figure, Option now, boolean above) {
        double own = value(weigher, unit, figure);
        double end = above ? figure.to() : figure.from();
        if (above ? end <= own : end >= own) {
            return Optional.empty();
        }
        double same = own;
        for (int i = 1; i <= TRIED; i++) {
            double share = (double) i / TRIED;
            double tried = above ? own + (end - own) * share * share : own + (end - own) * share;
            if (option(weigher, unit, figure, tried) != now) {
                return Optional.of(narrowed(weigher, unit, figure, now, same, tried));
            }
            same = tried;
        }
        return Optional.empty();
    }

    private static Flip narrowed(Weigher weigher, Circumstances unit, Flip.Figure figure, Option now, double same, double other) {
        double near = same;
        double far = other;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (near + far) / 2;
            if (option(weigher, unit, figure, middle) == now) {
                near = middle;
            } else {
                far = middle;
            }
        }
        return new Flip(figure, far, far > near, option(weigher, unit, figure, far));
    }

    private static double value(Weigher weigher, Circumstances unit, Flip.Figure figure) {
        return figure == Flip.Figure.AGE ? unit.standing().age(weigher.life()) : weigher.prices().number(figure.key());
    }

    private static Option option(Weigher weigher, Circumstances unit, Flip.Figure figure, double value) {
        if (figure == Flip.Figure.AGE) {
            Standing old = unit.standing();
            return weigher.advise(unit.with(new Standing(old.on(), old.hypotheses(), old.judgedVisits(), OptionalDouble.of(value),
                    old.notCooling()))).option();
        }
        return weigher.with(weigher.prices().with(figure.key(), value)).advise(unit).option();
    }
}
