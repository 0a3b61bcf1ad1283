/**
 * The chain from visits to verdicts, stage by stage; {@link org.longsummer.chain.Assessment} is its table of contents.
 *
 * <p>Each package below is one stage with one record and one function; a stage sees only earlier ones: visit, screening, expectation,
 * departure, condition, and from there due, outlook and weighing; {@code learning} holds what was learned across units and {@code season} the clock of running.
 */
package org.longsummer.chain;
