/**
 * Looks at the raw readings of one visit for the fingerprints of gross mistakes, names each and says what to do.
 *
 * <p>Impossible is refused as a retake, unlikely is kept with a remark, a mistake in an optional box empties that box alone.
 * Knows the visit, quantities and moist air; expects nothing of the unit. Limits are common practice of the trade, without a published
 * source, save where a constant says so.
 */
package org.longsummer.chain.screening;
