package org.longsummer.chain.visit;

import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;

/** The return air's humidity in the form in which it was read. */
public sealed interface Moisture {
    record Relative(RelativeHumidity humidity) implements Moisture {}

    record WetBulb(Temperature temperature) implements Moisture {}

    record DewPoint(Temperature temperature) implements Moisture {}
}
