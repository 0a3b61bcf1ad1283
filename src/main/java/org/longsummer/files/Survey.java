package org.longsummer.files;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.time.ZoneId;

/** Looks through every cell of a file for what can be meant in two ways, and for what shows how it is meant. */
final class Survey {
    /** A cell that stands for many. */
    record Example(String text, long row, String column) {}

    private final String name;
    private final List<String> header;
    private final List<String> columns;
    private final FileKind.Cells[] cells;
    private final char separator;
    private final int width;
    private final int unitColumn;
    /** Numbers stand in files of ours as they were typed, and are read so. */
    private final boolean isOurs;
    private final Function<String, Optional<ZoneId>> zones;
    private final Findings findings;
    private final Map<NumberForm.Shows, Example> numbers = new EnumMap<>(NumberForm.Shows.class);
    private final Map<DayForm.Shows, Example> days = new EnumMap<>(DayForm.Shows.class);
    private Example withoutZone;
    private boolean withoutOffset;
    private boolean dayNumbers;
    private boolean plain = true;
    private long nothings;
    private long rows;

    /**
     * @param columns what each column of the file is; empty for what is left out
     * @param zones the time zone of a unit's depot
     * @param findings receives rows that cannot be told apart into cells
     */
    Survey(String name, List<String> header, List<String> columns, char separator, Function<String, Optional<ZoneId>> zones, Findings findings) {
        this.name = name;
        this.header = header;
        this.columns = columns;
        this.separator = separator;
        this.zones = zones;
        this.findings = findings;
        this.cells = columns.stream().map(column -> column.isEmpty() ? null : FileKind.cells(column)).toArray(FileKind.Cells[]::new);
        this.isOurs = columns.contains(RecordColumns.MARK);
        this.unitColumn = columns.indexOf("unit_id");
        int last = header.size();
        while (last > 0 && header.get(last - 1).isBlank()) {
            last--;
        }
        this.width = last;
    }

    /** Whether a row has nothing in it, or not the cells that the header asks for; then it is no row of the table. */
    static boolean isEmpty(List<String> row) {
        return row.stream().allMatch(String::isBlank);
    }

    /** Cells up to the last one that holds something. */
    private static int filled(List<String> row) {
        int filled = row.size();
        while (filled > 0 && row.get(filled - 1).isBlank()) {
            filled--;
        }
        return filled;
    }

    /** What is wrong with the row as a whole. */
    Optional<String> fault(List<String> row) {
        if (filled(row) > width || row.size() < width) {
            return Optional.of("it has " + Math.max(filled(row), Math.min(row.size(), width)) + " cells and the header has " + width
                    + "; check for a missing or extra separator, and put text with separators between \"");
        }
        return row.stream().anyMatch(cell -> cell.indexOf('\u0000') >= 0)
                ? Optional.of("a sign that is no text stands in it; write the row again") : Optional.empty();
    }

    void row(long number, List<String> row) {
        if (isEmpty(row)) {
            plain &= row.size() == 1;
            return;
        }
        rows++;
        Optional<String> fault = fault(row);
        if (fault.isPresent()) {
            findings.add(new Problem(name, number, "", "", fault.get()));
            plain = false;
            return;
        }
        plain &= row.size() == header.size();
        for (int i = 0; i < width; i++) {
            if (cells[i] != null && !row.get(i).isEmpty()) {
                cell(number, i, row);
            }
        }
    }

    private void cell(long number, int index, List<String> row) {
        String given = row.get(index);
        if (cells[index] == FileKind.Cells.NUMBER && separator == ',' && isSimple(given)) {
            return;
        }
        String cell = CellForm.unprotected(given).strip();
        plain &= cell.length() == given.length() || cells[index] != FileKind.Cells.TEXT && cell.equals(given.strip());
        if (cells[index] != FileKind.Cells.TEXT && cells[index] != FileKind.Cells.CHOICE && CellForm.isNothing(cell)) {
            nothings++;
            plain = false;
            return;
        }
        switch (cells[index]) {
            case NUMBER -> {
                if (!isOurs) {
                    number(number, index, cell);
                }
            }
            case DAY, MOMENT -> moment(number, index, cell, row);
            case YES_NO, CHOICE -> plain &= new CellForm(false, false).cell(columns.get(index), cell, Optional.empty()).equalsIgnoreCase(cell);
            case TEXT -> { }
        }
    }

    private void number(long number, int index, String cell) {
        String bare = isSimple(cell) ? cell : NumberForm.bare(cell, columns.get(index));
        NumberForm.Shows shows = isSimple(bare) && separator == ',' ? NumberForm.Shows.NOTHING : NumberForm.shows(bare);
        if (shows != NumberForm.Shows.NOTHING) {
            numbers.putIfAbsent(shows, new Example(cell, number, header.get(index)));
        }
        plain &= bare.length() == cell.length() && (shows == NumberForm.Shows.NO_NUMBER || isBrief(bare));
    }

    /** Digits with at most one point, as nearly all numbers are: between commas, a point is a decimal point. */
    private static boolean isSimple(String text) {
        int points = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            points += c == '.' ? 1 : 0;
            if ((c < '0' || c > '9') && c != '.' || points > 1) {
                return false;
            }
        }
        return true;
    }

    /** At most one sign between the digits. */
    private static boolean isBrief(String number) {
        return number.chars().filter(c -> c == '.' || c == ',').count() <= 1;
    }

    private void moment(long number, int index, String cell, List<String> row) {
        boolean day = cells[index] == FileKind.Cells.DAY;
        if (day ? CellForm.isOurDay(cell) : CellForm.isOurMoment(cell)) {
            return;
        }
        plain = false;
        DayForm.Shows shows = DayForm.shows(cell);
        days.putIfAbsent(shows, new Example(cell, number, header.get(index)));
        dayNumbers |= DayForm.isDayNumber(cell);
        Optional<DayForm.Written> written = day ? Optional.empty() : DayForm.read(cell, shows != DayForm.Shows.MONTH_FIRST);
        if (written.filter(read -> read.time().isPresent() && read.offset().isEmpty()).isPresent()) {
            withoutOffset = true;
            if (withoutZone == null && (unitColumn < 0 || zones.apply(row.get(unitColumn).strip()).isEmpty())) {
                withoutZone = new Example(cell, number, header.get(index));
            }
        }
    }

    Optional<Example> shown(NumberForm.Shows what) {
        return Optional.ofNullable(numbers.get(what));
    }

    Optional<Example> shown(DayForm.Shows what) {
        return Optional.ofNullable(days.get(what));
    }

    /** A clock time of which neither its offset from UTC nor its depot's time zone is known. */
    Optional<Example> withoutZone() {
        return Optional.ofNullable(withoutZone);
    }

    boolean hasClockTimes() {
        return withoutOffset;
    }

    boolean hasDayNumbers() {
        return dayNumbers;
    }

    /** Cells of numbers and days with a dash or the like. */
    long nothings() {
        return nothings;
    }

    long rows() {
        return rows;
    }

    /** Every cell stands as in a file of ours. */
    boolean isPlain() {
        return plain && (separator != ',' || numbers.keySet().stream().allMatch(NumberForm.Shows.POINT::equals))
                && numbers.keySet().stream().noneMatch(NumberForm.Shows.EITHER::equals);
    }
}
