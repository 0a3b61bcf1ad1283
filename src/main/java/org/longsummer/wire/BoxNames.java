package org.longsummer.wire;

import org.longsummer.chain.condition.NextBestReading;
import org.longsummer.chain.screening.Field;

/** Which box of the visit form a finding or a proposal is about; temperatures without the ending for their unit. */
public final class BoxNames {
    private BoxNames() {}

    public static String of(Field field) {
        return switch (field) {
            case RETURN_DRY_BULB -> "return_db";
            case RETURN_HUMIDITY -> "return_rh_pct";
            case SUPPLY_DRY_BULB -> "supply_db";
            case AMBIENT_DRY_BULB -> "ambient_db";
            case AMBIENT_HUMIDITY -> "ambient_rh_pct";
            case AMPS -> "amps";
            case VOLTS -> "volts";
            case RUN_TIME -> "run_minutes";
            case FAN_SPEED -> "fan_speed";
            case POWER_SOURCE -> "power_source";
            case CAPACITOR -> "capacitor_uf";
            case ROOM_DRY_BULB -> "room_db";
            case CONDENSER_ENTERING -> "condenser_entering_db";
            case CONDENSER_LEAVING -> "condenser_leaving_db";
            case FAN_ONLY_AMPS -> "fan_only_amps";
            case START_PEAK -> "start_amps";
            case FILTER -> "filter_condition";
            case COIL -> "coil_condition";
            case ICED_COIL -> "iced_coil";
            case WHOLE_VISIT -> "";
        };
    }

    public static String of(NextBestReading.Kind kind) {
        return switch (kind) {
            case LOOK_AT_FILTER -> "filter_condition";
            case LOOK_AT_COILS -> "coil_condition";
            case CONDENSER_LEAVING -> "condenser_leaving_db";
            case ROOM_AIR -> "room_db";
            case FAN_ONLY_AMPS -> "fan_only_amps";
            case CAPACITOR -> "capacitor_uf";
            case AMPS -> "amps";
        };
    }
}
