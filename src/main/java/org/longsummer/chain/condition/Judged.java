package org.longsummer.chain.condition;

import org.longsummer.chain.learning.Lesson;

/**
 * A judged visit.
 *
 * @param verdict what it says of the unit
 * @param lesson what it teaches across units
 */
public record Judged(Verdict verdict, Lesson lesson) {}
