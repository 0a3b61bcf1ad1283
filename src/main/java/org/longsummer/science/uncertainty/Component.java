package org.longsummer.science.uncertainty;

/**
 * One line of an uncertainty budget (JCGM 100:2008, 4.3 and 5.1).
 *
 * @param name what is uncertain, in words
 * @param source where the uncertainty comes from
 * @param standardUncertainty of the input, in the input's own unit
 * @param unit the input's unit, as a symbol
 * @param sensitivity change of the logarithm of the result per unit of the input
 */
public record Component(String name, Source source, double standardUncertainty, String unit, double sensitivity) {

    /** Where a component's uncertainty comes from. */
    public enum Source { MEASUREMENT, MODEL, UNIT, CLASS, INSTRUMENT }

    /** Contribution to the standard uncertainty of the logarithm of the result: |c| u. */
    public double contribution() {
        return Math.abs(sensitivity) * standardUncertainty;
    }
}
