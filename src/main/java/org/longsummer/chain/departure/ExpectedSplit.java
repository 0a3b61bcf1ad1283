package org.longsummer.chain.departure;

import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.science.uncertainty.Budget;

/**
 * The split that this unit, clean and sound, should have shown in these conditions on these instruments, predicted before the
 * visit's own split and amps were used.
 *
 * @param value expected split
 * @param standardUncertainty of measured minus expected, k = 1
 * @param budget lines of the uncertainty, for the natural logarithm of the split
 */
public record ExpectedSplit(TemperatureDifference value, TemperatureDifference standardUncertainty, Budget budget) {}
