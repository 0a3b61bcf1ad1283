package org.longsummer.files;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Decides from a survey what a file says itself, takes over what somebody said, and asks the rest. */
final class Interview {
    private static final String DEPOT = "depot";

    private final Survey survey;
    private final Answers fresh;
    private final Answers answers;
    private final List<Question> questions;
    private final List<String> remarks;
    private Optional<Boolean> decimalComma = Optional.empty();
    private Optional<Boolean> dayFirst = Optional.empty();
    private Optional<ZoneId> zone = Optional.empty();

    /**
     * @param fresh what was said of this very file
     * @param answers the same, with what was said of earlier ones
     */
    Interview(Survey survey, Answers fresh, Answers answers, List<Question> questions, List<String> remarks) {
        this.survey = survey;
        this.fresh = fresh;
        this.answers = answers;
        this.questions = questions;
        this.remarks = remarks;
    }

    /** @return the answers with what the file says itself */
    Answers settle() {
        settleDecimals();
        settleDays();
        settleZone();
        if (survey.nothings() > 0) {
            remarks.add(survey.nothings() + (survey.nothings() == 1 ? " cell" : " cells")
                    + " with a dash, n/a or the like, where a number or a day belongs, counts as empty");
        }
        if (survey.hasDayNumbers()) {
            remarks.add("days written as a spreadsheet's day number are read as days counted from 1900");
        }
        Answers settled = answers;
        settled = decimalComma.isPresent() ? settled.with(Question.DECIMAL, decimalComma.get() ? "comma" : "point") : settled;
        return dayFirst.isPresent() ? settled.with(Question.DATES, dayFirst.get() ? "day_first" : "month_first") : settled;
    }

    CellForm form() {
        return new CellForm(decimalComma.orElse(false), dayFirst.orElse(false));
    }

    Optional<ZoneId> zone() {
        return zone;
    }

    private void settleDecimals() {
        boolean point = survey.shown(NumberForm.Shows.POINT).isPresent();
        boolean comma = survey.shown(NumberForm.Shows.COMMA).isPresent();
        Optional<Survey.Example> either = survey.shown(NumberForm.Shows.EITHER);
        if (either.isEmpty()) {
            return;
        }
        decimalComma = said(Question.DECIMAL, "comma", "point", point, comma);
        if (decimalComma.isPresent()) {
            return;
        }
        Survey.Example example = either.get();
        String digits = example.text();
        boolean hasComma = digits.indexOf(',') >= 0;
        String bare = digits.replaceAll("[^0-9.,+-]", "");
        String whole = bare.replaceAll("[.,]", "");
        String broken = bare.replace(',', '.');
        questions.add(new Question(Question.DECIMAL, "What stands before the decimals of a number, a point or a comma?", digits, example.row(),
                example.column(), List.of(new Question.Choice("point", "a decimal point", "this is " + (hasComma ? whole : broken)),
                        new Question.Choice("comma", "a decimal comma", "this is " + (hasComma ? broken : whole)))));
    }

    private void settleDays() {
        boolean dayShown = survey.shown(DayForm.Shows.DAY_FIRST).isPresent();
        boolean monthShown = survey.shown(DayForm.Shows.MONTH_FIRST).isPresent();
        Optional<Survey.Example> either = survey.shown(DayForm.Shows.EITHER);
        if (either.isEmpty() && !(dayShown && monthShown)) {
            dayFirst = dayShown ? Optional.of(true) : monthShown ? Optional.of(false) : Optional.empty();
            return;
        }
        dayFirst = said(Question.DATES, "day_first", "month_first", monthShown, dayShown);
        if (dayFirst.isPresent()) {
            return;
        }
        Survey.Example example = either.or(() -> survey.shown(DayForm.Shows.DAY_FIRST)).orElseThrow();
        questions.add(new Question(Question.DATES, "Which comes first in a date, the day or the month?" + (dayShown && monthShown
                ? " Some rows can only be meant one way and some only the other; those that do not fit are refused." : ""),
                example.text(), example.row(), example.column(), List.of(
                        new Question.Choice("day_first", "the day", inWords(example.text(), true)),
                        new Question.Choice("month_first", "the month", inWords(example.text(), false)))));
    }

    /** What was said of this file counts; then what the file shows; then what was said of earlier ones. */
    private Optional<Boolean> said(String key, String yes, String no, boolean showsNo, boolean showsYes) {
        Optional<Boolean> now = fresh.to(key).filter(List.of(yes, no)::contains).map(yes::equals);
        if (now.isPresent()) {
            return now;
        }
        if (showsYes != showsNo) {
            return Optional.of(showsYes);
        }
        return answers.to(key).filter(List.of(yes, no)::contains).filter(answer -> !showsYes).map(yes::equals);
    }

    private static String inWords(String text, boolean dayFirst) {
        return DayForm.read(text, dayFirst).map(written -> CellForm.inWords(written.day())).orElse("no day that there is");
    }

    private void settleZone() {
        if (!survey.hasClockTimes()) {
            return;
        }
        Optional<String> said = answers.to(Question.ZONE);
        zone = said.filter(answer -> !answer.equals(DEPOT)).flatMap(Interview::zone);
        if (zone.isPresent()) {
            return;
        }
        if (survey.withoutZone().isEmpty()) {
            remarks.add("clock times without an offset from UTC are read in the time zone of each unit's depot");
            return;
        }
        Survey.Example example = survey.withoutZone().get();
        List<Question.Choice> choices = new ArrayList<>();
        for (String name : List.of(ZoneId.systemDefault().getId(), "UTC")) {
            choices.add(new Question.Choice(name, name.equals("UTC") ? "UTC" : "the time of this machine, " + name, ""));
        }
        questions.add(new Question(Question.ZONE, "In which time zone are the clock times? They stand without an offset from UTC, and the depot's"
                + " time zone is not known. Give the name of a time zone, such as America/Denver, or enter it for the depot.",
                example.text(), example.row(), example.column(), choices.stream().distinct().toList()));
    }

    private static Optional<ZoneId> zone(String name) {
        try {
            return Optional.of(ZoneId.of(name));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
