package org.longsummer.science.cooling;

import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;
import org.longsummer.evidence.ReferenceTable;

/** Against the classic table of general motors, as a band: above nominal a small compressor's motor saturates. */
class MotorVoltagePublishedTest {
    @Test
    void currentWithinTheBand() {
        try (Comparison comparison = Comparison.bands(getClass(), "running current against volts", "motor-voltage")) {
            for (ReferenceTable.Row row : ReferenceTable.read("motor_current_with_voltage").rows()) {
                comparison.band(row.text("voltage_ratio") + " of rated volts", MotorVoltage.currentRatio(row.number("voltage_ratio")),
                        row.number("low"), row.number("high"));
            }
        }
    }
}
