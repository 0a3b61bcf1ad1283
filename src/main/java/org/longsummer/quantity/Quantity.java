package org.longsummer.quantity;

/** Something read or computed that can be said in a sentence, with its unit. */
public sealed interface Quantity permits Temperature, TemperatureDifference, RelativeHumidity, Current, Voltage, Capacitance, RunTime {
    /** The number with its unit, in the reader's system, for example {@code 75.2 °F}. */
    String text(UnitSystem system);
}
