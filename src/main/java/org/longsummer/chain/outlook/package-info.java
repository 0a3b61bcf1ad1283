/**
 * What is ahead of a unit: when it falls below what its owner can accept, and how likely it quits. Sees the conditions' posterior, the
 * calendar of running and a life curve; knows nothing of money. Key sources: first passage of a growing fault over seasons of running;
 * Weibull life with published figures.
 */
package org.longsummer.chain.outlook;
