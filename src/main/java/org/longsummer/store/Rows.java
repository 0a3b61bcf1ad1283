package org.longsummer.store;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Many rows for one statement, bound by the names in it. A row costs a look-up a value and no more: where a fleet's whole history is
 * written, what a general binder does for each value outweighs the writing itself.
 */
abstract class Rows {
    private static final Pattern NAME = Pattern.compile(":([a-z_0-9]+)");

    private final Map<String, Integer> places = new HashMap<>();
    private Object[] values;

    /** @param sql with each name once, as {@code :name} */
    Rows(String sql) {
        for (MatchResult name : NAME.matcher(sql).results().toList()) {
            if (places.put(name.group(1), places.size()) != null) {
                throw new IllegalArgumentException(name.group() + " stands twice in " + sql);
            }
        }
        values = new Object[places.size()];
    }

    /** The statement with a question mark for each name. */
    static String unnamed(String sql) {
        Matcher names = NAME.matcher(sql);
        return names.replaceAll("?");
    }

    /** Where a name stands, from 0 on. */
    final int place(String name) {
        return places.get(name);
    }

    /** @param value a text or a number; null, or empty, for none */
    final Rows bind(String name, Object value) {
        values[places.get(name)] = value instanceof Optional<?> some ? some.orElse(null) : value;
        return this;
    }

    /** The row is complete; what is not bound is none. */
    final void add() {
        Object[] row = values;
        values = new Object[row.length];
        take(row);
    }

    /** Its values, in the order of the names; whoever takes them may keep them. */
    abstract void take(Object[] row);
}
