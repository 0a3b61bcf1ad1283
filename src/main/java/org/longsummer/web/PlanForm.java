package org.longsummer.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Money;
import org.longsummer.wire.Boxes;

/**
 * What is said of planned work, whether for one unit or for many.
 *
 * @param works at least one, unless the boxes hold a problem
 * @param plannedFor by when; the beginning of time while the boxes hold a problem
 * @param price all-in, where one is known
 */
record PlanForm(List<Work> works, LocalDate plannedFor, Optional<Money> price, String note) {
    private static final int LONGEST_NOTE = 1_000;

    /** Reads boxes {@code works}, {@code planned_for}, {@code price}, {@code note}; what is wrong with them stays in the boxes. */
    static PlanForm of(Boxes boxes, String currency) {
        List<Work> works = List.copyOf(boxes.choices("works", Work.class));
        if (boxes.text("works").isEmpty()) {
            boxes.refuse("works", "A plan needs some work.", "Choose what is to be done.");
        }
        Optional<LocalDate> on = boxes.day("planned_for");
        if (boxes.text("planned_for").isEmpty()) {
            boxes.refuse("planned_for", "A plan needs a day.", "Say by when.");
        }
        return new PlanForm(works, on.orElse(LocalDate.EPOCH), WeighingApi.money(boxes, "price", currency), boxes.text("note", LONGEST_NOTE));
    }
}
