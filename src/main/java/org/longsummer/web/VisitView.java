package org.longsummer.web;

import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.SupplyAt;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.Quantity;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.RecordedVisit;

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
        return new VisitView(row.visit().id(), row.visit().unitId(), row.counts(), word(typedIn), boxes(row, typedIn),
                shown(row.visit().readings(), reader));
    }

    static String word(UnitSystem system) {
        return system == UnitSystem.US ? "us" : "si";
    }

    private static Map<String, String> boxes(RecordedVisit row, UnitSystem typedIn) {
        Visit visit = row.visit();
        Map<String, String> boxes = new LinkedHashMap<>();
        boxes.put("visited_at", LocalDateTime.ofInstant(visit.at(), visit.offset()).withNano(0).toString());
        boxes.put("utc_offset_minutes", Integer.toString(visit.offset().getTotalSeconds() / 60));
        boxes.put("technician", visit.technician());
        boxes.put("notes", visit.notes());
        boxes.put("work_done", visit.workDone().stream().sorted().map(Boxes::word).collect(Collectors.joining(",")));
        putChoice(boxes, "supply_at", visit.readings().supplyAt(), SupplyAt.UNKNOWN);
        putChoice(boxes, "ambient_at", visit.readings().ambientAt(), AmbientAt.UNKNOWN);
        putChoice(boxes, "fan_speed", visit.fanSpeed(), FanSpeed.UNKNOWN);
        putChoice(boxes, "power_source", visit.powerSource(), PowerSource.UNKNOWN);
        putChoice(boxes, "filter_condition", visit.filter(), FilterLook.NOT_LOOKED);
        putChoice(boxes, "coil_condition", visit.coil(), CoilLook.NOT_LOOKED);
        boxes.put("iced_coil", visit.icedCoil() ? "yes" : "");
        boxes.put("one_probe", visit.instruments().oneProbe() ? "yes" : "");
        shown(visit.readings(), typedIn).forEach((name, value) -> boxes.put(boxName(name, value, typedIn), typed(value)));
        boxes.putAll(row.entry().typed().texts());
        boxes.values().removeIf(String::isEmpty);
        return boxes;
    }

    private static void putChoice(Map<String, String> boxes, String box, Enum<?> choice, Enum<?> none) {
        boxes.put(box, choice == none ? "" : Boxes.word(choice));
    }

    private static String boxName(String name, Shown value, UnitSystem system) {
        boolean temperature = value.unit().equals(system.temperatureSymbol());
        return temperature ? name + (system == UnitSystem.US ? "_f" : "_c") : name;
    }

    private static String typed(Shown value) {
        return Decimal.text(value.number(), 2).replaceAll("0+$", "").replaceAll("\\.$", "");
    }

    private static Map<String, Shown> shown(Readings readings, UnitSystem system) {
        Map<String, Shown> shown = new LinkedHashMap<>();
        put(shown, "return_db", readings.returnDryBulb(), system);
        readings.returnMoisture().ifPresent(moisture -> putMoisture(shown, moisture, system));
        put(shown, "supply_db", readings.supplyDryBulb(), system);
        put(shown, "ambient_db", readings.ambientDryBulb(), system);
        put(shown, "ambient_rh_pct", readings.ambientHumidity(), system);
        put(shown, "amps", readings.amps(), system);
        put(shown, "volts", readings.volts(), system);
        put(shown, "run_minutes", readings.runTime(), system);
        put(shown, "condenser_entering_db", readings.condenserEntering(), system);
        put(shown, "condenser_leaving_db", readings.condenserLeaving(), system);
        put(shown, "room_db", readings.roomDryBulb(), system);
        put(shown, "fan_only_amps", readings.fanOnlyAmps(), system);
        put(shown, "start_amps", readings.startPeak(), system);
        put(shown, "capacitor_uf", readings.capacitor(), system);
        return shown;
    }

    private static void putMoisture(Map<String, Shown> shown, Moisture moisture, UnitSystem system) {
        if (moisture instanceof Moisture.Relative relative) {
            put(shown, "return_rh_pct", Optional.of(relative.humidity()), system);
        } else {
            boolean wet = moisture instanceof Moisture.WetBulb;
            Temperature temperature = wet ? ((Moisture.WetBulb) moisture).temperature() : ((Moisture.DewPoint) moisture).temperature();
            put(shown, wet ? "return_wb" : "return_dp", Optional.of(temperature), system);
        }
    }

    private static void put(Map<String, Shown> shown, String name, Optional<? extends Quantity> quantity, UnitSystem system) {
        quantity.ifPresent(value -> shown.put(name, Shown.of(value, system)));
    }
}
