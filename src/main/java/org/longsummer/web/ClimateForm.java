package org.longsummer.web;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.chain.season.Climate;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.Temperature;
import org.longsummer.wire.Boxes;

/**
 * How much units run at a depot, as boxes: {@code hours_1} to {@code hours_12} a day, {@code opens_month}, {@code opens_day},
 * {@code closes_month}, {@code closes_day}. All empty: nobody says.
 */
final class ClimateForm {
    private static final int MONTHS = 12;

    private ClimateForm() {}

    static Optional<Climate> climate(Boxes boxes) {
        List<Double> hours = new ArrayList<>();
        boolean given = false;
        for (int month = 1; month <= MONTHS; month++) {
            given |= boxes.text("hours_" + month).isPresent();
            hours.add(boxes.number("hours_" + month, 0, 24, "h a day").orElse(0.0));
        }
        return given ? make(boxes, hours) : Optional.empty();
    }

    private static Optional<Climate> make(Boxes boxes, List<Double> hours) {
        Optional<MonthDay> opens = day(boxes, "opens", MonthDay.of(1, 1));
        Optional<MonthDay> closes = day(boxes, "closes", MonthDay.of(12, 31));
        if (opens.isEmpty() || closes.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Climate(hours, opens.get(), closes.get()));
        } catch (IllegalArgumentException e) {
            boxes.refuse("hours_1", "Within the season, units run some hours in at least one month.", "Give hours, or other days for the season.");
            return Optional.empty();
        }
    }

    private static Optional<MonthDay> day(Boxes boxes, String name, MonthDay whenEmpty) {
        Optional<Double> month = boxes.number(name + "_month", 1, MONTHS, "months");
        Optional<Double> day = boxes.number(name + "_day", 1, 31, "days");
        try {
            return Optional.of(MonthDay.of(month.map(Double::intValue).orElse(whenEmpty.getMonthValue()),
                    day.map(Double::intValue).orElse(whenEmpty.getDayOfMonth())));
        } catch (DateTimeException e) {
            boxes.refuse(name + "_day", "The month has no such day.", "Check day and month.");
            return Optional.empty();
        }
    }

    /** From twelve mean temperatures, {@code mean_1_f} or {@code mean_1_c} and so on; the rule is {@link Climate#fromNormals}. */
    static Optional<Climate> fromTemperatures(Boxes boxes) {
        List<Temperature> means = new ArrayList<>();
        for (int month = 1; month <= MONTHS; month++) {
            Optional<Temperature> mean = boxes.temperature("mean_" + month);
            if (mean.isEmpty() && boxes.text("mean_" + month + "_f").or(monthly(boxes, month)).isEmpty()) {
                boxes.refuse("mean_" + month + "_f", "All twelve months are needed.", "Type the month's mean outdoor temperature.");
            }
            mean.ifPresent(means::add);
        }
        if (means.size() < MONTHS) {
            return Optional.empty();
        }
        Optional<MonthDay> opens = day(boxes, "opens", MonthDay.of(1, 1));
        Optional<MonthDay> closes = day(boxes, "closes", MonthDay.of(12, 31));
        try {
            return opens.isPresent() && closes.isPresent() ? Optional.of(Climate.fromNormals(means, opens.get(), closes.get())) : Optional.empty();
        } catch (IllegalArgumentException e) {
            boxes.refuse("mean_1_f", "By these temperatures nothing ever runs in the season.", "Check them, and the days of the season.");
            return Optional.empty();
        }
    }

    private static java.util.function.Supplier<Optional<String>> monthly(Boxes boxes, int month) {
        return () -> boxes.text("mean_" + month + "_c");
    }

    static Map<String, String> texts(Climate climate) {
        Map<String, String> boxes = new LinkedHashMap<>();
        boxes.put("opens_month", Integer.toString(climate.opens().getMonthValue()));
        boxes.put("opens_day", Integer.toString(climate.opens().getDayOfMonth()));
        boxes.put("closes_month", Integer.toString(climate.closes().getMonthValue()));
        boxes.put("closes_day", Integer.toString(climate.closes().getDayOfMonth()));
        for (int month = 1; month <= MONTHS; month++) {
            boxes.put("hours_" + month, Decimal.text(climate.runHoursPerDay().get(month - 1), 1).replaceAll("\\.0$", ""));
        }
        return boxes;
    }
}
