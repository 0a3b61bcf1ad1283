/**
 * A simulated fleet whose truth is known, and how verdicts on it are scored: the figures that the build holds. The fleet was made by a
 * refrigeration-cycle model that shares nothing with the product.
 */
package org.longsummer.fleet;
