package org.longsummer.files;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** What a file of a fleet may hold. */
public enum FileKind {
    UNITS(UnitColumns.LAYOUT), VISITS(VisitColumns.LAYOUT), DEPOTS(DepotsFile.LAYOUT), PRICES(PriceRowsFile.LAYOUT), WORK(PlansFile.LAYOUT);

    /** What stands in the cells of a column. */
    enum Cells { TEXT, NUMBER, DAY, MOMENT, CHOICE, YES_NO }

    private static final Set<String> DAYS = Set.of("installed_on", "warranty_until", "planned_for");
    private static final Set<String> MOMENTS = Set.of("visited_at", "received_at", "withdrawn_at", "planned_at", "ended_at");
    private static final Set<String> CHOICES = Set.of("rated_amps_kind", "duty", "supply_at", "ambient_at", "fan_speed", "power_source",
            "filter_condition", "coil_condition", "work_done", "works", "ended_as", "scope", "key", "typed_system");
    private static final Set<String> YES_NO = Set.of("ducted", "soft_starter", "variable_speed", "iced_coil", "one_probe");
    private static final Pattern NUMBERS = Pattern.compile(
            ".*(_f|_c|_pct|_uf|_btuh|_ft|_m|_a|_v|amps|volts|volts_off|run_minutes|run_hours_\\d+|value|price)");

    private final Layout layout;

    FileKind(Layout layout) {
        this.layout = layout;
    }

    Layout layout() {
        return layout;
    }

    /** The columns that are read, as they are called in files of ours. */
    public List<String> columns() {
        return layout.known();
    }

    /** Of each list at least one column must be there. */
    public List<List<String>> required() {
        return layout.required();
    }

    static Cells cells(String column) {
        if (DAYS.contains(column)) {
            return Cells.DAY;
        }
        if (MOMENTS.contains(column)) {
            return Cells.MOMENT;
        }
        if (CHOICES.contains(column)) {
            return Cells.CHOICE;
        }
        if (YES_NO.contains(column)) {
            return Cells.YES_NO;
        }
        return NUMBERS.matcher(column).matches() ? Cells.NUMBER : Cells.TEXT;
    }

    /** The name of the file in a record, without its ending. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<FileKind> of(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }
}
