package org.longsummer.files;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Turns cells of somebody else's file into cells of ours. What it does not understand it leaves as it stands, so that the reader of our
 * files says what is wrong with it.
 *
 * @param decimalComma whether {@code 13,500} is thirteen and a half
 * @param dayFirst whether {@code 5/6/2024} is in June
 */
record CellForm(boolean decimalComma, boolean dayFirst) {
    /** What people write where there is nothing; under numbers and days only. */
    private static final Set<String> NOTHING = Set.of("-", "--", "\u2013", "\u2014", "n/a", "na", "#n/a", "null", "?");
    private static final Map<String, String> YES_NO = Map.of("y", "yes", "n", "no", "x", "yes", "\u2713", "yes");
    private static final Pattern PROTECTED = Pattern.compile("=\"([^\"]*)\"");
    private static final Pattern OUR_MOMENT = Pattern.compile("\\d{4}-\\d{2}-\\d{2}[T ]\\d{2}:\\d{2}(:\\d{2}(\\.\\d+)?)?(Z|[+-]\\d{2}:\\d{2}(:\\d{2})?)");
    private static final Pattern JOINED = Pattern.compile("\\s*(,|;|/|&|\\band\\b)\\s*");
    private static final Pattern BETWEEN_WORDS = Pattern.compile("(?<=[a-z])[ -]+(?=[a-z])");
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

    /** What a spreadsheet keeps from being a number is written {@code ="00123"}. */
    static String unprotected(String cell) {
        if (cell.indexOf('=') < 0) {
            return cell;
        }
        Matcher match = PROTECTED.matcher(cell.strip());
        return match.matches() ? match.group(1) : cell;
    }

    static boolean isNothing(String cell) {
        return cell.length() <= 4 && NOTHING.contains(cell.toLowerCase(Locale.ROOT));
    }

    static boolean isOurMoment(String cell) {
        return OUR_MOMENT.matcher(cell).matches();
    }

    static boolean isOurDay(String cell) {
        return cell.length() == 10 && cell.charAt(4) == '-' && cell.charAt(7) == '-' && DayForm.shows(cell) == DayForm.Shows.NOTHING;
    }

    /** @param zone in which clocks are read where the moment has no offset of its own */
    String cell(String column, String given, Optional<ZoneId> zone) {
        String cell = unprotected(given).strip();
        FileKind.Cells kind = FileKind.cells(column);
        if (cell.isEmpty() || kind == FileKind.Cells.TEXT) {
            return kind == FileKind.Cells.TEXT ? unprotected(given) : cell;
        }
        return switch (kind) {
            case NUMBER -> isNothing(cell) ? "" : NumberForm.plain(NumberForm.bare(cell, column), decimalComma).orElse(cell);
            case DAY -> isNothing(cell) ? "" : isOurDay(cell) ? cell : DayForm.read(cell, dayFirst).map(written -> written.day().toString()).orElse(cell);
            case MOMENT -> isNothing(cell) ? "" : isOurMoment(cell) ? cell : DayForm.read(cell, dayFirst).flatMap(written -> moment(written, zone)).orElse(cell);
            case YES_NO -> YES_NO.getOrDefault(cell.toLowerCase(Locale.ROOT), cell);
            case CHOICE -> choice(column, cell);
            case TEXT -> cell;
        };
    }

    private static Optional<String> moment(DayForm.Written written, Optional<ZoneId> zone) {
        if (written.time().isEmpty()) {
            return Optional.empty();
        }
        LocalDateTime clock = LocalDateTime.of(written.day(), written.time().get());
        return written.offset().map(offset -> clock.atOffset(offset))
                .or(() -> zone.map(place -> clock.atZone(place).toOffsetDateTime())).map(MOMENT::format);
    }

    /** A word of letters and underlines is a choice as it stands, if any: most cells are, and a file may have millions. */
    private static boolean isOneWord(String cell) {
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if ((c < 'a' || c > 'z') && c != '_') {
                return false;
            }
        }
        return !cell.equals("and");
    }

    private static String choice(String column, String cell) {
        if (isOneWord(cell)) {
            return cell;
        }
        String word = cell.toLowerCase(Locale.ROOT);
        if (column.equals("work_done") || column.equals("works")) {
            word = JOINED.matcher(word).replaceAll("+");
        }
        return BETWEEN_WORDS.matcher(word).replaceAll("_");
    }

    /** The day in words, so that nobody can mistake it. */
    static String inWords(LocalDate day) {
        return DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH).format(day);
    }
}
