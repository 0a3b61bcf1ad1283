package org.longsummer.store;

import java.util.LinkedHashMap;
import java.util.Map;
import org.longsummer.access.Reach;

/** A reach as a condition of a query; the names of depots are bound as values, never written into the query. */
final class ReachCondition {
    private final Map<String, Object> values = new LinkedHashMap<>();
    private final boolean everywhere;

    ReachCondition(Reach reach) {
        everywhere = reach.everywhere();
        reach.depots().forEach(depot -> values.put("reach_" + values.size(), depot));
    }

    /** @param column with a depot's name; null in it is seen by those alone who see everything */
    String on(String column) {
        if (everywhere) {
            return "1 = 1";
        }
        return values.isEmpty() ? "1 = 0" : column + " in (:" + String.join(", :", values.keySet()) + ")";
    }

    Map<String, Object> values() {
        return values;
    }
}
