package org.longsummer.quantity;

/**
 * Electric power drawn.
 *
 * @param watts W
 */
public record Power(double watts) {
    public double kilowatts() {
        return watts / 1000;
    }
}
