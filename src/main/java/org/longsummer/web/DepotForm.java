package org.longsummer.web;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.Depot;
import org.longsummer.wire.Boxes;

/** A depot as it comes from a form, and the way back. What is wrong is noted in the boxes. */
final class DepotForm {
    private static final int LONGEST = 120;

    private final Boxes boxes;

    DepotForm(Boxes boxes) {
        this.boxes = boxes;
    }

    Depot depot() {
        String name = boxes.text("name", LONGEST);
        if (name.isEmpty()) {
            boxes.refuse("name", "A depot needs a name.", "Type what you call the place.");
        }
        Optional<Altitude> feet = boxes.largeNumber("altitude_ft", -1_400, 20_000, "ft").map(Altitude::feet);
        Optional<Altitude> altitude = feet.or(() -> boxes.largeNumber("altitude_m", -430, 6_100, "m").map(Altitude::new));
        return new Depot(name, altitude, zone(), ClimateForm.climate(boxes));
    }

    private Optional<ZoneId> zone() {
        return boxes.text("time_zone").flatMap(text -> {
            try {
                return Optional.of(ZoneId.of(text));
            } catch (DateTimeException e) {
                boxes.refuse("time_zone", "The name of a time zone such as America/Denver belongs here.", "Choose one of the list, or leave it empty.");
                return Optional.empty();
            }
        });
    }

    static Map<String, String> texts(Depot depot, UnitSystem system) {
        Map<String, String> boxes = new LinkedHashMap<>();
        boxes.put("name", depot.name());
        depot.altitude().ifPresent(altitude -> boxes.put(system == UnitSystem.US ? "altitude_ft" : "altitude_m",
                Decimal.text(system == UnitSystem.US ? altitude.feet() : altitude.metres(), 0)));
        boxes.put("time_zone", depot.timeZone().map(ZoneId::getId).orElse(""));
        depot.climate().ifPresent(climate -> boxes.putAll(ClimateForm.texts(climate)));
        return boxes;
    }
}
