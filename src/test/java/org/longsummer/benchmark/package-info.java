/** Benchmarks of the product, measured on request and asserted nowhere. */
package org.longsummer.benchmark;
