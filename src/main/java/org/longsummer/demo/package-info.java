/**
 * An invented rental fleet with its visits, made by code, and large invented fleets for trying how the rest holds up.
 *
 * <p>Nothing here is measured, and nothing here is used to judge. The readings come from a small model of its own, of measured
 * slopes and round numbers, on purpose not from the product's expectation; see {@code demo-data/README.md}.
 */
package org.longsummer.demo;
