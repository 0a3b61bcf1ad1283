package org.longsummer.chain.weighing;

import org.longsummer.quantity.Money;

/**
 * What planned works cost and are expected to save.
 *
 * @param price all-in: as planned, or by the price list
 * @param saving expected cost of leaving the unit alone, less that of doing the works; their price is in it
 * @param spread standard deviation of the saving over the states that the history leaves possible
 */
public record PlannedSaving(Money price, Money saving, Money spread) {}
