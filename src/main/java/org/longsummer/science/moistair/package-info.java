/**
 * Moist air: saturation of water vapour, states from dry bulb and one humidity, the standard atmosphere.
 *
 * <p>One class a published relation; symbols and order of coefficients as printed. Knows quantities only. Key source: [hof-2017]
 * chapter 1.
 */
package org.longsummer.science.moistair;
