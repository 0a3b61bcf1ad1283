package org.longsummer.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** Reads nullable columns, and turns choices into their words and back. */
final class Column {
    private Column() {}

    static <T> Optional<T> quantity(ResultSet row, String column, DoubleFunction<T> make) throws SQLException {
        double number = row.getDouble(column);
        return row.wasNull() ? Optional.empty() : Optional.of(make.apply(number));
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
        return word == null ? whenNull : Enum.valueOf(type, word.toUpperCase(Locale.ROOT));
    }

    /** The word of a choice; null for the one that stands for "not known". */
    static <E extends Enum<E>> String word(E value, E whenNull) {
        return value == whenNull ? null : value.name().toLowerCase(Locale.ROOT);
    }
}
