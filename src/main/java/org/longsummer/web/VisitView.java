package org.longsummer.web;

import java.util.Map;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.RecordedVisit;
import org.longsummer.wire.Shown;
import org.longsummer.wire.VisitBoxes;

/**
 * A stored visit as the boxes of its form, so that it can be shown, corrected or taken up again.
 *
 * @param id the visit
 * @param unitId its unit
 * @param counts neither corrected nor withdrawn
 * @param system in which it was typed
 * @param boxes texts by the names of the boxes: as typed where that was kept, else from the quantities
 * @param shown the readings by the start of their box's name, in the reader's system
 */
record VisitView(String id, String unitId, boolean counts, String system, Map<String, String> boxes, Map<String, Shown> shown) {

    static VisitView of(RecordedVisit row, UnitSystem reader) {
        UnitSystem typedIn = row.entry().typed().system();
        return new VisitView(row.visit().id(), row.visit().unitId(), row.counts(), word(typedIn), VisitBoxes.texts(row.visit(), typedIn, row.entry().typed().texts()),
                VisitBoxes.shown(row.visit().readings(), reader));
    }

    static String word(UnitSystem system) {
        return system == UnitSystem.US ? "us" : "si";
    }
}
