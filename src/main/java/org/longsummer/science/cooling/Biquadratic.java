package org.longsummer.science.cooling;

/**
 * A performance curve c1 + c2 x + c3 x² + c4 y + c5 y² + c6 x y, as building simulation publishes them: x entering wet bulb,
 * y outdoor dry bulb, °C; the result is a ratio to the rating point. Coefficients in the page's order.
 */
record Biquadratic(double c1, double c2, double c3, double c4, double c5, double c6) {
    double at(double x, double y) {
        return c1 + c2 * x + c3 * x * x + c4 * y + c5 * y * y + c6 * x * y;
    }
}
