package org.longsummer.chain.expectation;

import org.longsummer.science.uncertainty.Uncertain;

/** Merges independent witnesses of one quantity by inverse variance (JCGM 100, weighted mean). */
final class Weighted {
    private double precision;
    private double sum;

    void add(double value, double standardUncertainty) {
        double weight = 1 / (standardUncertainty * standardUncertainty);
        precision += weight;
        sum += weight * value;
    }

    Uncertain mean() {
        return new Uncertain(sum / precision, 1 / Math.sqrt(precision));
    }
}
