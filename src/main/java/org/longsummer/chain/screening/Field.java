package org.longsummer.chain.screening;

import java.util.List;
import org.longsummer.chain.visit.Reading;

/** The box of a visit that a finding is about. */
public enum Field {
    RETURN_DRY_BULB("Return air", Reading.RETURN_DRY_BULB),
    RETURN_HUMIDITY("Return humidity", Reading.RETURN_RELATIVE_HUMIDITY, Reading.RETURN_WET_BULB, Reading.RETURN_DEW_POINT),
    SUPPLY_DRY_BULB("Supply air", Reading.SUPPLY_DRY_BULB),
    AMBIENT_DRY_BULB("Outdoor air", Reading.AMBIENT_DRY_BULB),
    AMBIENT_HUMIDITY("Outdoor humidity", Reading.AMBIENT_RELATIVE_HUMIDITY),
    AMPS("Amps", Reading.AMPS),
    VOLTS("Volts", Reading.VOLTS),
    RUN_TIME("Running time", Reading.RUN_TIME),
    FAN_SPEED("Fan speed", "fan_speed"),
    POWER_SOURCE("Power", "power_source"),
    CAPACITOR("Capacitor", Reading.CAPACITOR),
    ROOM_DRY_BULB("Room air", Reading.ROOM_DRY_BULB),
    RETURN_SECOND_DRY_BULB("Return air by a second thermometer", Reading.RETURN_SECOND_DRY_BULB),
    CONDENSER_ENTERING("Air entering the condenser", Reading.CONDENSER_ENTERING),
    CONDENSER_LEAVING("Air leaving the condenser", Reading.CONDENSER_LEAVING),
    FAN_ONLY_AMPS("Fan-only amps", Reading.FAN_ONLY_AMPS),
    START_PEAK("Start peak", Reading.START_PEAK),
    FILTER("Filter", "filter_condition"),
    COIL("Coils", "coil_condition"),
    ICED_COIL("Ice", "iced_coil"),
    WHOLE_VISIT("These readings", "");

    private final String label;
    private final String box;
    private final List<Reading<?>> readings;

    Field(String label, Reading<?>... readings) {
        this.label = label;
        this.box = readings[0].name();
        this.readings = List.of(readings);
    }

    Field(String label, String box) {
        this.label = label;
        this.box = box;
        this.readings = List.of();
    }

    public String label() {
        return label;
    }

    /** Its name in a form, for a temperature without the ending for its unit; empty for the visit as a whole. */
    public String box() {
        return box;
    }

    /** The readings that go into it: one, several forms of one, or none where something is chosen. */
    public List<Reading<?>> readings() {
        return readings;
    }
}
