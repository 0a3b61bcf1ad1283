package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** Reads nullable columns, and turns choices into their words and back. */
final class Column {
    /** A fleet's history is millions of words of some forty choices. */
    private static final ClassValue<Map<String, Enum<?>>> WORDS = new ClassValue<>() {
        @Override
        protected Map<String, Enum<?>> computeValue(Class<?> type) {
            Map<String, Enum<?>> words = new HashMap<>();
            for (Object value : type.getEnumConstants()) {
                Enum<?> choice = (Enum<?>) value;
                words.put(choice.name().toLowerCase(Locale.ROOT), choice);
            }
            return words;
        }
    };

    private Column() {}

    static <T> Optional<T> quantity(ResultSet row, String column, DoubleFunction<T> make) throws SQLException {
        double number = row.getDouble(column);
        return number == 0 && row.wasNull() ? Optional.empty() : Optional.of(make.apply(number));
    }

    static Optional<String> text(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getString(column));
    }

    static Optional<LocalDate> day(ResultSet row, String column) throws SQLException {
        return text(row, column).map(LocalDate::parse);
    }

    static Optional<Instant> moment(ResultSet row, String column) throws SQLException {
        long milliseconds = row.getLong(column);
        return row.wasNull() ? Optional.empty() : Optional.of(Instant.ofEpochMilli(milliseconds));
    }

    static <E extends Enum<E>> E choice(ResultSet row, String column, Class<E> type, E whenNull) throws SQLException {
        String word = row.getString(column);
        if (word == null) {
            return whenNull;
        }
        Enum<?> choice = WORDS.get(type).get(word);
        if (choice == null) {
            throw new IllegalArgumentException("the column " + column + " holds a word that this version does not know");
        }
        return type.cast(choice);
    }

    /** The word of a choice; null for the one that stands for "not known". */
    static <E extends Enum<E>> String word(E value, E whenNull) {
        return value == whenNull ? null : value.name().toLowerCase(Locale.ROOT);
    }
}
