package org.longsummer.chain.departure;

import org.longsummer.quantity.Current;
import org.longsummer.science.uncertainty.Budget;

/**
 * The amps that this unit, clean and sound, should have drawn in these conditions on these instruments, predicted before the
 * visit's own split and amps were used.
 *
 * @param value expected amps
 * @param standardUncertainty of measured minus expected, k = 1
 * @param budget lines of the uncertainty, for the natural logarithm of the amps
 */
public record ExpectedAmps(Current value, Current standardUncertainty, Budget budget) {}
