package org.longsummer.chain.weighing;

import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Money;

/**
 * A price in hand for one piece of work, all-in.
 *
 * @param work what is offered; {@code UNIT_REPLACED} for a new unit
 * @param price all-in, call-out included
 */
public record Quote(Work work, Money price) {}
