package org.longsummer.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.State;
import org.longsummer.store.FleetUnit.Duty;
import org.longsummer.store.YardCriterion;
import org.longsummer.store.YardDays;
import org.longsummer.store.YardFilter;
import org.longsummer.store.YardOrder;
import org.longsummer.wire.Boxes;
import org.longsummer.wire.Problem;

/** What is asked of the yard, as it stands in an address or in the body of a request; all that is wrong with it is said at once. */
final class YardQuestion {
    static final String NEVER_JUDGED = "never_judged";
    /** A warranty that ends so soon is worth a look before it does. Ours: a season's check lies within. */
    private static final int WARRANTY_DAYS = 120;
    private static final int OLDEST = 60;

    private final Function<String, String> asked;
    private final LocalDate today;
    private final List<Problem> problems = new ArrayList<>();

    private YardQuestion(Function<String, String> asked, LocalDate today) {
        this.asked = asked;
        this.today = today;
    }

    /**
     * A question that was understood.
     *
     * @param place depot, text and age alone: what the sentences above the list are counted in
     * @param filter what is listed
     * @param order in which order
     * @param days that the sentences count from
     * @param since the day that was named for "not visited since"
     */
    record Understood(YardFilter place, YardFilter filter, YardOrder order, YardDays days, Optional<LocalDate> since) {}

    /**
     * @param asked texts by the names of the parts; null where a part is not given
     * @param start what the person may see
     * @throws Refused with all problems
     */
    static Understood of(Function<String, String> asked, YardFilter start, LocalDate today) {
        YardQuestion question = new YardQuestion(asked, today);
        YardFilter place = question.place(start);
        Optional<LocalDate> since = question.day("since");
        YardFilter filter = question.narrowed(question.duty(place), since);
        YardOrder order = question.order();
        if (!question.problems.isEmpty()) {
            throw new Refused(400, question.problems);
        }
        return new Understood(place, filter, order, new YardDays(today, since.map(YardQuestion::start), today.plusDays(WARRANTY_DAYS)), since);
    }

    private static Instant start(LocalDate day) {
        return day.atStartOfDay().toInstant(ZoneOffset.UTC);
    }

    private YardFilter place(YardFilter start) {
        YardFilter filter = start;
        filter = text("depot").map(filter::inDepot).orElse(filter);
        filter = text("text").map(filter::containing).orElse(filter);
        Optional<String> age = text("older");
        if (age.isPresent() && !(age.get().matches("\\d{1,2}") && Integer.parseInt(age.get()) <= OLDEST)) {
            problems.add(new Problem("older", age.get(), "A whole number of years, 0 to " + OLDEST + ".", "Leave it out for units of any age."));
            return filter;
        }
        return age.isPresent() ? filter.and(new YardCriterion.InstalledBefore(today.minusYears(Integer.parseInt(age.get())))) : filter;
    }

    private YardFilter duty(YardFilter filter) {
        return switch (choice("duty", "in_service", "in_service", "out", "out_of_service", "sold")) {
            case "out" -> filter.outOfServiceInstead();
            case "out_of_service" -> filter.of(Duty.OUT_OF_SERVICE);
            case "sold" -> filter.of(Duty.SOLD);
            default -> filter;
        };
    }

    private YardFilter narrowed(YardFilter place, Optional<LocalDate> since) {
        YardFilter filter = condition(state(place));
        Optional<LocalDate> begun = day("begun");
        filter = begun.isPresent() ? filter.and(new YardCriterion.BegunSince(begun.get())) : filter;
        if (choice("seen", "any", "any", "unvisited").equals("unvisited")) {
            filter = since.isPresent() ? filter.notVisitedSince(start(since.get())) : filter.and(new YardCriterion.NotCheckedForSeason(today));
        }
        if (choice("due", "any", "any", "overdue").equals("overdue")) {
            filter = filter.dueBefore(today);
        }
        if (choice("filter", "any", "any", "overdue").equals("overdue")) {
            filter = filter.and(new YardCriterion.FilterDueBefore(today));
        }
        if (choice("warranty", "any", "any", "ending").equals("ending")) {
            filter = filter.and(new YardCriterion.WarrantyEnds(today, today.plusDays(WARRANTY_DAYS)));
        }
        String planned = choice("planned", "any", "any", "yes", "no");
        return planned.equals("any") ? filter : filter.and(new YardCriterion.WorkPlanned(planned.equals("yes")));
    }

    private YardFilter state(YardFilter filter) {
        Optional<String> given = text("state");
        if (given.isEmpty()) {
            return filter;
        }
        if (given.get().equals(NEVER_JUDGED)) {
            return filter.onlyNeverJudged();
        }
        return Arrays.stream(State.values()).filter(state -> state.word().equals(given.get())).findFirst().map(filter::inState)
                .orElseGet(() -> wrong(filter, "state", given.get(), "One of act, drifting, steady, retake, never_judged."));
    }

    private YardFilter condition(YardFilter filter) {
        Optional<String> given = text("condition");
        return given.isEmpty() ? filter : Arrays.stream(Condition.values()).filter(condition -> condition.word().equals(given.get())).findFirst()
                .map(filter::withCondition)
                .orElseGet(() -> wrong(filter, "condition", given.get(), "A condition's word, such as condenser_fouling."));
    }

    private YardFilter wrong(YardFilter filter, String part, String given, String limit) {
        problems.add(new Problem(part, given, limit, "Leave it out for all."));
        return filter;
    }

    private YardOrder order() {
        return switch (choice("order", "waiting", "waiting", "pressing", "label", "unvisited")) {
            case "label" -> YardOrder.LABEL;
            case "unvisited" -> YardOrder.LONGEST_UNVISITED;
            case "pressing" -> YardOrder.MOST_PRESSING;
            default -> YardOrder.WAITING_COSTS;
        };
    }

    private Optional<String> text(String part) {
        return Optional.ofNullable(asked.apply(part)).map(String::strip).filter(text -> !text.isEmpty());
    }

    private String choice(String part, String standard, String... words) {
        String given = text(part).orElse(standard);
        if (!List.of(words).contains(given)) {
            problems.add(new Problem(part, given, "One of " + Arrays.stream(words).collect(Collectors.joining(", ")) + ".",
                    "Leave it out for " + standard + "."));
            return standard;
        }
        return given;
    }

    private Optional<LocalDate> day(String part) {
        Boxes boxes = new Boxes(Map.of(part, text(part).orElse("")));
        Optional<LocalDate> day = boxes.day(part);
        problems.addAll(boxes.problems());
        return day;
    }
}
