package org.longsummer.chain.condition;

import org.longsummer.chain.screening.Field;

/**
 * One thing that speaks for or against the likeliest condition.
 *
 * @param visitId the visit it comes from
 * @param field the reading
 * @param weight natural logarithm of how many times likelier the reading is under the named condition than under a sound unit
 * @param text in plain words, without units that depend on the reader
 */
public record Evidence(String visitId, Field field, double weight, String text) {}
