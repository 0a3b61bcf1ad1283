package org.longsummer.wire;

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

/** A visit as the boxes of its form and as the texts beside them: the way back from {@link VisitForm}. */
public final class VisitBoxes {
    private VisitBoxes() {}

    /**
     * Texts by the names of the boxes.
     *
     * @param system in which temperatures are named that were not typed
     * @param typed as typed, where that was kept; it goes before what the quantities give
     */
    public static Map<String, String> texts(Visit visit, UnitSystem system, Map<String, String> typed) {
        Map<String, String> boxes = new LinkedHashMap<>();
        boxes.put("visited_at", LocalDateTime.ofEpochSecond(visit.at().getEpochSecond(), 0, visit.offset()).toString());
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
        shown(visit.readings(), system).forEach((name, value) -> boxes.put(boxName(name, value, system), typed(value)));
        boxes.putAll(typed);
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

    /** The readings by the start of their box's name, in the reader's system. */
    public static Map<String, Shown> shown(Readings readings, UnitSystem system) {
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
