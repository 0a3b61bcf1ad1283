package org.longsummer.science.uncertainty;

/**
 * A value with its standard uncertainty (k = 1).
 *
 * @param value best estimate
 * @param standardUncertainty same unit as the value
 */
public record Uncertain(double value, double standardUncertainty) {}
