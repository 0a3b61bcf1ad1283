package org.longsummer.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.condition.State;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.quantity.Decimal;
import org.longsummer.science.uncertainty.Uncertain;

/** Split and amps against expected over the seasons, each judged visit with its bar; winters take no more room than a line. */
final class SeasonsPicture {
    private static final double WIDTH = 250;
    private static final double HEIGHT = 122;
    private static final double LEFT = 34;
    private static final double RIGHT = 244;
    private static final double TOP = 14;
    private static final double BOTTOM = 92;
    /** The most that is drawn either way, %; what lies beyond stands at the edge. */
    private static final double MOST = 30;
    private static final double LIMIT = 10;
    private static final long LONGEST_GAP = 75;
    private static final long FOLDED = 18;

    private record Point(LocalDate on, double at, Optional<Uncertain> split, Optional<Uncertain> amps) {}

    private SeasonsPicture() {}

    static Picture of(List<Verdict> verdicts) {
        List<Point> points = points(verdicts);
        boolean anyAmps = points.stream().anyMatch(point -> point.amps().isPresent());
        return Picture.drawn("Over the seasons", words(points), WIDTH, HEIGHT, pen -> {
            axis(pen);
            double end = points.isEmpty() ? 1 : Math.max(1, points.get(points.size() - 1).at());
            int year = 0;
            for (Point point : points) {
                double x = LEFT + 8 + (RIGHT - LEFT - 16) * (points.size() == 1 ? 0.5 : point.at() / end);
                if (point.on().getYear() != year) {
                    year = point.on().getYear();
                    pen.text(x, BOTTOM + 10, Pen.Anchor.MIDDLE, 8, Integer.toString(year));
                }
                point.amps().ifPresent(amps -> reading(pen, x + 2.2, amps, false));
                point.split().ifPresent(split -> reading(pen, x - 2.2, split, true));
            }
            pen.dot(LEFT + 4, HEIGHT - 8, 3, true);
            pen.text(LEFT + 10, HEIGHT - 5, Pen.Anchor.START, 8, "split" + (anyAmps ? "" : "; amps were not read"));
            if (anyAmps) {
                pen.dot(LEFT + 44, HEIGHT - 8, 3, false);
                pen.text(LEFT + 50, HEIGHT - 5, Pen.Anchor.START, 8, "amps; bars: ± two standard uncertainties");
            }
        });
    }

    private static void axis(Pen pen) {
        for (double percent : new double[] {-LIMIT, 0, LIMIT}) {
            pen.line(LEFT, y(percent), RIGHT, y(percent), percent == 0 ? 1 : 0.6, percent != 0);
            pen.text(LEFT - 3, y(percent) + 3, Pen.Anchor.END, 8, (percent > 0 ? "+" : "") + Decimal.text(percent, 0) + " %");
        }
        pen.text(LEFT, TOP - 5, Pen.Anchor.START, 8, "against what a sound unit shows in that weather");
    }

    private static void reading(Pen pen, double x, Uncertain departure, boolean filled) {
        double expanded = 2 * departure.standardUncertainty();
        pen.line(x, y(percent(departure.value() - expanded)), x, y(percent(departure.value() + expanded)), 0.9, false);
        pen.dot(x, y(percent(departure.value())), 3, filled);
    }

    private static double percent(double logarithm) {
        return 100 * (Math.exp(logarithm) - 1);
    }

    private static double y(double percent) {
        double kept = Math.max(-MOST, Math.min(MOST, percent));
        return TOP + (BOTTOM - TOP) * (MOST - kept) / (2 * MOST);
    }

    private static List<Point> points(List<Verdict> verdicts) {
        List<Point> points = new ArrayList<>();
        for (Verdict verdict : verdicts) {
            if (verdict.state() != State.RETAKE) {
                LocalDate on = verdict.visit().localDay();
                double at = 0;
                if (!points.isEmpty()) {
                    Point before = points.get(points.size() - 1);
                    long gap = java.time.temporal.ChronoUnit.DAYS.between(before.on(), on);
                    at = before.at() + (gap > LONGEST_GAP ? FOLDED : gap);
                }
                points.add(new Point(on, at, verdict.departure().split(), verdict.departure().amps()));
            }
        }
        return points;
    }

    private static String words(List<Point> points) {
        if (points.isEmpty()) {
            return "No visit could be judged yet.";
        }
        Point last = points.get(points.size() - 1);
        return points.size() + (points.size() == 1 ? " judged visit" : " judged visits") + ", the last on " + last.on()
                + last.split().map(split -> ": split " + said(split)).orElse("") + last.amps().map(amps -> ", amps " + said(amps)).orElse("") + ".";
    }

    private static String said(Uncertain departure) {
        double percent = percent(departure.value());
        return Decimal.text(Math.abs(percent), 0) + " % " + (percent < 0 ? "below" : "above") + " expected";
    }
}
