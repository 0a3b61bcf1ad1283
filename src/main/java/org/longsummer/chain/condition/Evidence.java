package org.longsummer.chain.condition;

import java.time.LocalDate;
import java.util.Optional;
import org.longsummer.chain.screening.Field;
import org.longsummer.quantity.Quantity;

/**
 * One thing that speaks for or against the likeliest fault.
 *
 * @param visitId the visit it comes from
 * @param day the visit's day at the place
 * @param field the reading or look
 * @param fault what it speaks for, or against
 * @param weight natural logarithm of how many times likelier the reading is under that fault than in a sound unit; negative
 *     against it
 * @param seen the reading, where it is a number
 * @param expected what was expected of the sound unit, where something was
 * @param expectedU standard uncertainty of measured minus expected
 * @param words the look in words, where it is not a number
 */
public record Evidence(String visitId, LocalDate day, Field field, Condition fault, double weight, Optional<Quantity> seen,
        Optional<Quantity> expected, Optional<Quantity> expectedU, String words) {}
