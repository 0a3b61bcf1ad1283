/**
 * From a unit's history of departures and looks to probabilities of its conditions, the state of a visit and the words for it.
 *
 * <p>The last stage before outlook and weighing; in the chain only those and {@link org.longsummer.chain.Assessment} see it. Magnitudes of faults
 * come from {@code science.cooling}; hazards and looks are practice and marked so.
 */
package org.longsummer.chain.condition;
