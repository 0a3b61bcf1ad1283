package org.longsummer.chain.season;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.longsummer.quantity.Temperature;

/**
 * How much a depot's units run over the year: the monthly normal of run-hours a day while the season is open.
 *
 * @param runHoursPerDay twelve numbers, January first, 0 to 24 h a day on a day in use
 * @param opens first day of the season
 * @param closes last day of the season; before {@code opens} when the season spans the turn of the year
 */
public record Climate(List<Double> runHoursPerDay, MonthDay opens, MonthDay closes) {
    /** Outdoor mean above which a parked vehicle in the sun asks for cooling, °C. Ours. */
    private static final double BALANCE_POINT = 8;
    /** Run-hours a day for each kelvin above the balance point. Ours. */
    private static final double HOURS_PER_KELVIN = 0.6;
    private static final double MOST_HOURS = 16;

    /** A temperate depot of the northern hemisphere, April to October, 1,194 run-hours a year. A default of ours. */
    public static final Climate NORTHERN = new Climate(List.of(0.0, 0.0, 0.0, 2.0, 4.0, 7.0, 9.0, 9.0, 6.0, 2.0, 0.0, 0.0),
            MonthDay.of(4, 1), MonthDay.of(10, 31));

    /** The same six months later. A default of ours. */
    public static final Climate SOUTHERN = new Climate(shifted(NORTHERN.runHoursPerDay), MonthDay.of(10, 1), MonthDay.of(4, 30));

    public Climate {
        runHoursPerDay = List.copyOf(runHoursPerDay);
        List<String> problems = problems(runHoursPerDay, opens, closes);
        if (!problems.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", problems));
        }
    }

    /**
     * Run-hours from a depot's monthly normals of outdoor temperature: 0.6 h a day for each kelvin above 8 °C, at most 16 h. A rule of
     * ours for a start; a user's own hours take its place.
     *
     * @param monthlyMeans twelve mean outdoor temperatures, January first
     */
    public static Climate fromNormals(List<Temperature> monthlyMeans, MonthDay opens, MonthDay closes) {
        List<Double> hours = new ArrayList<>();
        for (Temperature mean : monthlyMeans) {
            hours.add(Math.max(0, Math.min(MOST_HOURS, (mean.celsius() - BALANCE_POINT) * HOURS_PER_KELVIN)));
        }
        return new Climate(hours, opens, closes);
    }

    /** Whether the season is open on a day of the year. */
    public boolean isOpen(MonthDay day) {
        return opens.compareTo(closes) <= 0
                ? day.compareTo(opens) >= 0 && day.compareTo(closes) <= 0
                : day.compareTo(opens) >= 0 || day.compareTo(closes) <= 0;
    }

    /** Run-hours on one day of the year; 0 when the season is closed. */
    public double runHours(MonthDay day) {
        return isOpen(day) ? runHoursPerDay.get(day.getMonthValue() - 1) : 0;
    }

    private static List<Double> shifted(List<Double> hours) {
        List<Double> shifted = new ArrayList<>(hours.subList(6, 12));
        shifted.addAll(hours.subList(0, 6));
        return shifted;
    }

    private static List<String> problems(List<Double> hours, MonthDay opens, MonthDay closes) {
        List<String> problems = new ArrayList<>();
        if (hours.size() != 12) {
            problems.add("run-hours a day: " + hours.size() + " months given; give twelve, January first");
            return problems;
        }
        boolean runs = false;
        for (int month = 1; month <= 12; month++) {
            double given = hours.get(month - 1);
            if (!(given >= 0 && given <= 24)) {
                problems.add("run-hours a day in month " + month + ": " + given + " given; give 0 to 24");
            }
            runs |= given > 0 && touches(month, opens, closes);
        }
        if (!runs) {
            problems.add("run-hours a day: none within the season from " + opens + " to " + closes + "; give at least one month some hours");
        }
        return problems;
    }

    private static boolean touches(int month, MonthDay opens, MonthDay closes) {
        int from = opens.getMonthValue();
        int to = closes.getMonthValue();
        return opens.compareTo(closes) <= 0 ? month >= from && month <= to : month >= from || month <= to;
    }
}
