/**
 * Statistics on plain numbers: distributions of life and their fits. Unit-blind on purpose. Key source: NIST/SEMATECH e-Handbook of
 * Statistical Methods.
 */
package org.longsummer.science.statistics;
