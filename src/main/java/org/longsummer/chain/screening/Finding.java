package org.longsummer.chain.screening;

import java.util.Optional;
import org.longsummer.quantity.Quantity;
import org.longsummer.quantity.UnitSystem;

/**
 * Something odd about a visit's readings: which box, what was given, what it looks like and what to do.
 *
 * @param mistake what it looks like
 * @param field the box
 * @param given the value in the box, when there is one
 * @param retake the visit cannot be judged; otherwise it is kept with this remark
 */
public record Finding(Mistake mistake, Field field, Optional<Quantity> given, boolean retake) {

    /** One or two sentences: box, value, what it looks like, what to do. */
    public String text(UnitSystem system) {
        String box = field.label() + given.map(quantity -> " " + quantity.text(system)).orElse("");
        String seen = mistake.seen();
        return box + (mistake.isSaidOfTheBox() ? " " : ": ") + seen + (seen.endsWith("?") ? " " : ". ") + mistake.remedy();
    }
}
