package org.longsummer.files;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Days and moments as people and spreadsheets write them. Whether {@code 5/6/2024} is in May or in June is not decided here. Years of two
 * digits are read as POSIX.1-2017 says for {@code strptime}: 69 to 99 lie in the twentieth century, 00 to 68 in this one.
 */
final class DayForm {
    /** What a text shows about the order of its numbers. */
    enum Shows { NOTHING, DAY_FIRST, MONTH_FIRST, EITHER, NO_DAY }

    /**
     * What a text says.
     *
     * @param time absent when only a day stands there
     * @param offset from UTC, where it stands there
     */
    record Written(LocalDate day, Optional<LocalTime> time, Optional<ZoneOffset> offset) {}

    private static final String REST = "(?:[ T,\u00a0\u202f]+(.*))?";
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})([-/.])(\\d{1,2})\\2(\\d{1,2})" + REST);
    private static final Pattern NUMBERS = Pattern.compile("(\\d{1,2})([-/.])\\s?(\\d{1,2})\\2\\s?(\\d{4}|\\d{2})" + REST);
    private static final Pattern NAMED = Pattern.compile("(\\d{1,2})[-/. ]+([A-Za-z]{3,9})[-/., ]+(\\d{4}|\\d{2})" + REST);
    private static final Pattern NAMED_FIRST = Pattern.compile("([A-Za-z]{3,9})\\.? +(\\d{1,2}),? +(\\d{4})" + REST);
    private static final Pattern TIME = Pattern.compile(
            "(\\d{1,2}):(\\d{2})(?::(\\d{2})(?:[.,](\\d{1,9}))?)?[ \u00a0\u202f]*(?:([AaPp])\\.?[Mm]\\.?)?[ ]*(?:(Z|z|UTC|[+-]\\d{2}:?\\d{2}))?");
    private static final Pattern DAY_NUMBER = Pattern.compile("([2-7]\\d{4})(?:[.,](\\d+))?");
    /** Day 0 of spreadsheets, which count a 29 February 1900 that never was. */
    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
    private static final List<String> MONTHS = List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
    private static final int PIVOT = 69;

    private DayForm() {}

    static boolean isDayNumber(String text) {
        return DAY_NUMBER.matcher(text).matches();
    }

    static Shows shows(String text) {
        Matcher numbers = NUMBERS.matcher(text);
        if (!numbers.matches()) {
            return read(text, true).isPresent() ? Shows.NOTHING : Shows.NO_DAY;
        }
        int first = Integer.parseInt(numbers.group(1));
        int second = Integer.parseInt(numbers.group(3));
        if (first > 12 || second > 12) {
            return first > 12 && second > 12 ? Shows.NO_DAY : first > 12 ? Shows.DAY_FIRST : Shows.MONTH_FIRST;
        }
        // days with points between are written day first wherever they are written
        return numbers.group(2).equals(".") ? Shows.DAY_FIRST : first == second ? Shows.NOTHING : Shows.EITHER;
    }

    /** @return empty when it is no day that there was */
    static Optional<Written> read(String text, boolean dayFirst) {
        try {
            return Optional.ofNullable(written(text, dayFirst));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static Written written(String text, boolean dayFirst) {
        Matcher match = YEAR_FIRST.matcher(text);
        if (match.matches()) {
            return timed(LocalDate.of(number(match, 1), number(match, 3), number(match, 4)), match.group(5));
        }
        match = NUMBERS.matcher(text);
        if (match.matches()) {
            return timed(LocalDate.of(year(match.group(4)), number(match, dayFirst ? 3 : 1), number(match, dayFirst ? 1 : 3)), match.group(5));
        }
        match = NAMED.matcher(text);
        if (match.matches()) {
            return timed(LocalDate.of(year(match.group(3)), month(match.group(2)), number(match, 1)), match.group(4));
        }
        match = NAMED_FIRST.matcher(text);
        if (match.matches()) {
            return timed(LocalDate.of(year(match.group(3)), month(match.group(1)), number(match, 2)), match.group(4));
        }
        match = DAY_NUMBER.matcher(text);
        return match.matches() ? ofDayNumber(match) : null;
    }

    private static Written ofDayNumber(Matcher match) {
        LocalDate day = DAY_ZERO.plusDays(number(match, 1));
        if (match.group(2) == null) {
            return new Written(day, Optional.empty(), Optional.empty());
        }
        long seconds = (long) (Double.parseDouble("0." + match.group(2)) * 86_400 + 0.5);
        return new Written(day.plusDays(seconds / 86_400), Optional.of(LocalTime.ofSecondOfDay(seconds % 86_400)), Optional.empty());
    }

    private static Written timed(LocalDate day, String rest) {
        if (rest == null || rest.isBlank()) {
            return new Written(day, Optional.empty(), Optional.empty());
        }
        Matcher time = TIME.matcher(rest.strip());
        if (!time.matches()) {
            return null;
        }
        int hour = number(time, 1);
        if (time.group(5) != null) {
            if (hour < 1 || hour > 12) {
                return null;
            }
            hour = hour % 12 + (time.group(5).equalsIgnoreCase("p") ? 12 : 0);
        }
        int nanos = time.group(4) == null ? 0 : Integer.parseInt((time.group(4) + "00000000").substring(0, 9));
        LocalTime at = LocalTime.of(hour, number(time, 2), time.group(3) == null ? 0 : number(time, 3), nanos);
        return new Written(day, Optional.of(at), Optional.ofNullable(time.group(6)).map(DayForm::offset));
    }

    private static ZoneOffset offset(String text) {
        return text.equalsIgnoreCase("Z") || text.equals("UTC") ? ZoneOffset.UTC : ZoneOffset.of(text);
    }

    private static int number(Matcher match, int group) {
        return Integer.parseInt(match.group(group));
    }

    private static int year(String text) {
        int year = Integer.parseInt(text);
        return text.length() > 2 ? year : year < PIVOT ? 2000 + year : 1900 + year;
    }

    private static int month(String name) {
        int month = MONTHS.indexOf(name.substring(0, 3).toLowerCase(Locale.ROOT)) + 1;
        if (month == 0) {
            throw new DateTimeException(name);
        }
        return month;
    }
}
