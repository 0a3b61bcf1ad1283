package org.longsummer.store;

import java.util.List;
import org.longsummer.access.Reach;

/** A list of depots in a column: one name a line, null for all of them. Names hold no line breaks. */
final class ReachColumn {
    private ReachColumn() {}

    static String write(Reach reach) {
        return reach.everywhere() ? null : String.join("\n", reach.depots());
    }

    static Reach read(String column) {
        if (column == null) {
            return Reach.EVERYWHERE;
        }
        return Reach.of(column.isEmpty() ? List.of() : List.of(column.split("\n")));
    }
}
