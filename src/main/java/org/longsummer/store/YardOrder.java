package org.longsummer.store;

/** In which order the yard lists its units; each is carried by an index of its own. */
public enum YardOrder {
    /** What thirty days of waiting are expected to cost, the most first; among equal ones, as where it was never worked out, the most pressing. */
    WAITING_COSTS("dearest", "standing_by_dearest"),
    /** State (act, drifting, never judged, steady), then probability of impact. */
    MOST_PRESSING("pressing", "standing_by_pressing"),
    LABEL("label", "standing_by_label"),
    /** Never visited first, then the longest ago. */
    LONGEST_UNVISITED("last_seen_ms", "standing_by_last_visit");

    private final String column;
    private final String index;

    YardOrder(String column, String index) {
        this.column = column;
        this.index = index;
    }

    /** The column of the standing that a page goes on from, from its least value on; equal ones go by the unit's id. */
    String column() {
        return column;
    }

    String index() {
        return index;
    }

    /**
     * Looks at a text that a page is to go on from.
     *
     * @throws NumberFormatException when it is none that a page of this order gave
     */
    public void check(String text) {
        value(text);
    }

    /** The value of that column as text, turned back into what the database compares with. */
    Object value(String text) {
        return switch (this) {
            case WAITING_COSTS, MOST_PRESSING -> Double.valueOf(text);
            case LABEL -> text;
            case LONGEST_UNVISITED -> Long.valueOf(text);
        };
    }
}
