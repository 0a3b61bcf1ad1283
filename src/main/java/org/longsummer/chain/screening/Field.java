package org.longsummer.chain.screening;

/** The box of a visit that a finding is about. */
public enum Field {
    RETURN_DRY_BULB("Return air"),
    RETURN_HUMIDITY("Return humidity"),
    SUPPLY_DRY_BULB("Supply air"),
    AMBIENT_DRY_BULB("Outdoor air"),
    AMBIENT_HUMIDITY("Outdoor humidity"),
    AMPS("Amps"),
    VOLTS("Volts"),
    RUN_TIME("Running time"),
    FAN_SPEED("Fan speed"),
    POWER_SOURCE("Power"),
    CAPACITOR("Capacitor"),
    ROOM_DRY_BULB("Room air"),
    CONDENSER_ENTERING("Air entering the condenser"),
    CONDENSER_LEAVING("Air leaving the condenser"),
    FAN_ONLY_AMPS("Fan-only amps"),
    START_PEAK("Start peak"),
    FILTER("Filter"),
    COIL("Coils"),
    ICED_COIL("Ice"),
    WHOLE_VISIT("These readings");

    private final String label;

    Field(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
