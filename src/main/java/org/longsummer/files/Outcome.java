package org.longsummer.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What would become of one row of a file.
 *
 * @param file its file
 * @param row its row as a spreadsheet counts it
 * @param what the unit, visit, depot, figure or plan that it tells of; empty when that cannot be read
 * @param becomes what it would become
 * @param changes what would change
 * @param problems why it is refused
 */
public record Outcome(String file, long row, String what, Becomes becomes, List<Change> changes, List<Problem> problems) {
    /** What a row becomes. */
    public enum Becomes {
        NEW, CHANGED, SAME, REFUSED;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** A field that would change; texts as in files. */
    public record Change(String field, String from, String to) {}

    /** What differs between two rows of the same columns. */
    static List<Change> between(List<String> columns, List<String> before, List<String> after) {
        List<Change> changes = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (!before.get(i).equals(after.get(i))) {
                changes.add(new Change(columns.get(i), before.get(i), after.get(i)));
            }
        }
        return changes;
    }

    /** One line. */
    public String text() {
        String place = file + ", row " + row + (what.isEmpty() ? "" : ", " + what) + ": " + becomes.word();
        if (becomes == Becomes.CHANGED) {
            return place + "; " + String.join("; ", changes.stream().map(change -> change.field() + " from " + quoted(change.from()) + " to "
                    + quoted(change.to())).toList());
        }
        return becomes == Becomes.REFUSED ? place + "; " + String.join("; ", problems.stream().map(problem -> (problem.column().isEmpty() ? ""
                : problem.column() + ": ") + (problem.given().isEmpty() ? "" : "\"" + problem.given() + "\" is given; ") + problem.remedy()).toList()) : place;
    }

    private static String quoted(String text) {
        return text.isEmpty() ? "nothing" : "\"" + text + "\"";
    }
}
