package org.longsummer.files;

/**
 * Why something given cannot be taken.
 *
 * @param file name of the file; empty when the texts did not come from a file
 * @param row row of the file as a spreadsheet counts it, the header being row 1; 0 for the file as a whole
 * @param column the column; empty for the row as a whole
 * @param given what stands there; empty when nothing does
 * @param remedy what is allowed and what to do
 */
public record Problem(String file, long row, String column, String given, String remedy) {
    private static final int LONGEST_QUOTE = 60;

    /** One line, for example {@code visits.csv, row 17, amps: "abc" is given; write a number such as 12.4 ...}. */
    public String text() {
        String place = file + (row > 0 ? ", row " + row : "") + (column.isEmpty() ? "" : ", " + column);
        return place + ": " + (given.isEmpty() ? "" : "\"" + quoted() + "\" is given; ") + remedy;
    }

    private String quoted() {
        String oneLine = given.replaceAll("\\p{Cntrl}", " ");
        return oneLine.length() <= LONGEST_QUOTE ? oneLine : oneLine.substring(0, LONGEST_QUOTE) + " ...";
    }
}
