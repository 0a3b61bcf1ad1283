package org.longsummer.store;

/** In which order the yard lists its units. */
public enum YardOrder {
    /** State (act, drifting, never judged, steady), then probability of impact. */
    MOST_PRESSING("s.in_service desc, s.state_rank desc, s.p_impact desc, s.unit_id"),
    LABEL("s.label, s.unit_id"),
    /** Never visited first, then the longest ago. */
    LONGEST_UNVISITED("coalesce(s.last_visit_at_ms, 0), s.unit_id");

    private final String sql;

    YardOrder(String sql) {
        this.sql = sql;
    }

    String sql() {
        return sql;
    }
}
