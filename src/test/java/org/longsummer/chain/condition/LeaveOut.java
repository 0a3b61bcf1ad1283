package org.longsummer.chain.condition;

import java.util.Set;
import org.longsummer.chain.visit.Unit;

/** Histories that are judged without one ingredient. */
public final class LeaveOut {
    private LeaveOut() {}

    /** @param ingredient name of an {@link Ingredient}; empty for none */
    public static History history(Unit unit, String ingredient) {
        return new History(unit, false, ingredient.isEmpty() ? Set.of() : Set.of(Ingredient.valueOf(ingredient)));
    }
}
