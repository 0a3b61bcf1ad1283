/**
 * Keep, clean, repair, replace: what each is expected to cost over a horizon, by the same possible states of the unit and the same
 * chances of quitting for all, as exact sums; which is cheapest, how sure, where the answer flips, and what reading would decide. Sees
 * the outlook's hypotheses and hazards and a price list. Source of the discounting: NIST Handbook 135 [nist-hb135]; every price and
 * every chance of curing is a default of ours until the user puts his own.
 */
package org.longsummer.chain.weighing;
