/**
 * Measured against expected: the departures of split and amps as natural logarithms, with the unit's own baseline taken into account.
 *
 * <p>Knows the earlier stages and what was learned; names no condition.
 */
package org.longsummer.chain.departure;
