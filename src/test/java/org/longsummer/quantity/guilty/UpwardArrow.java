package org.longsummer.quantity.guilty;

import org.longsummer.science.uncertainty.Uncertain;

/** A quantity that knows a science: against the arrows. */
public final class UpwardArrow {
    private UpwardArrow() {}

    public static double againstTheArrow(Uncertain value) {
        return value.value();
    }
}
