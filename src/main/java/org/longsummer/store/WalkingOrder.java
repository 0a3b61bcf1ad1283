package org.longsummer.store;

import java.util.Comparator;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The order in which somebody walks from unit to unit: depot, row, place, vehicle, where on the roof. Where nobody said the row, it comes last. */
final class WalkingOrder {
    private static final Pattern NUMBER = Pattern.compile("\\d+");
    private static final int DIGITS = 12;
    private static final String LAST = "\uFFFF";

    private WalkingOrder() {}

    /** A unit and where it stands. */
    record Standpoint(Standing unit, String row, String place) {}

    static final Comparator<Standpoint> OF_A_ROUND = Comparator.comparing((Standpoint at) -> known(at.unit().depot()))
            .thenComparing(at -> known(at.row())).thenComparing(at -> known(at.place()))
            .thenComparing(at -> counted(at.unit().vehicle().isEmpty() ? at.unit().label() : at.unit().vehicle()))
            .thenComparing(at -> counted(at.unit().roofPosition())).thenComparing(at -> counted(at.unit().label()))
            .thenComparing(at -> at.unit().unitId());

    private static String known(String text) {
        return text.isBlank() ? LAST : counted(text);
    }

    /** So that 2 comes before 10. */
    private static String counted(String text) {
        Matcher numbers = NUMBER.matcher(text.toLowerCase(Locale.ROOT));
        return numbers.replaceAll(number -> "0".repeat(Math.max(0, DIGITS - number.group().length())) + number.group());
    }
}
