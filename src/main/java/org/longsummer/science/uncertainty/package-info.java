/**
 * Uncertainty of measurement: budgets, Type A evaluations, propagation with correlated inputs.
 *
 * <p>Unit-blind on purpose: a sensitivity and a standard uncertainty belong to whatever they are of. Knows nothing else of the
 * project. Key source: [jcgm-100-2008].
 */
package org.longsummer.science.uncertainty;
