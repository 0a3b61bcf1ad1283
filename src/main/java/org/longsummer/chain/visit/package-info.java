/**
 * What a person brings: a unit with its plate, and a visit with its readings, looks, work done and instruments, as they were noted.
 *
 * <p>Records only; nothing is judged. Every reading may be missing. Knows quantities and the depot's clock of running.
 */
package org.longsummer.chain.visit;
