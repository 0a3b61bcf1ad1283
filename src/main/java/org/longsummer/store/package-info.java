/**
 * What was recorded and what was judged, kept in one database file: the only place that knows SQL.
 *
 * <p>Knows the chain and what lies below it; knows nothing of pages. Visits are append-only; verdicts and standings are rewritten
 * from them. Quantities are stored in SI units with full precision, beside the text that was typed.
 */
package org.longsummer.store;
