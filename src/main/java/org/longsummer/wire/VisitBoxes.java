package org.longsummer.wire;

import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Reading;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.SupplyAt;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.Decimal;
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
        Reading.ALL.forEach(reading -> reading.in(readings).ifPresent(value -> shown.put(reading.name(), Shown.of(value, system))));
        return shown;
    }
}
