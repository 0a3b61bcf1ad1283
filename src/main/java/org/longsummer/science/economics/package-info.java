/**
 * Money over time: present values. Plain numbers in one currency, since the formulas do not care which. Source: NIST Handbook 135
 * (1995), ASTM E917.
 */
package org.longsummer.science.economics;
