/**
 * Fleets as CSV files, in and out: which columns there are, what they mean, and what to say when a file cannot be taken.
 *
 * <p>Knows the chain and the store's records; knows nothing of pages or SQL. A file is taken whole or refused whole, with every
 * problem named. A value that is merely impossible is taken: judging it is the chain's work.
 */
package org.longsummer.files;
