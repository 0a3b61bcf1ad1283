package org.longsummer.science.cooling;

import org.junit.jupiter.api.Test;
import org.longsummer.evidence.Comparison;
import org.longsummer.evidence.ReferenceTable;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.science.moistair.MoistAir;
import org.longsummer.science.moistair.StandardAtmosphere;

/** The worked example of [energyplus-dx]. */
class BypassFactorCoilPublishedTest {
    /** The example takes its air flow at a density of its own; the exact relations give 0.177 to 0.184 by which density is taken. */
    private static final double BY_DENSITY = 0.012;

    @Test
    void bypassFactorFromCapacityFlowAndSensibleHeatRatio() {
        try (Comparison comparison = Comparison.absolute(getClass(), "bypass factor of the worked example", "", "energyplus-dx", BY_DENSITY)) {
            for (ReferenceTable.Row row : ReferenceTable.read("energyplus_bypass_factor").rows()) {
                MoistAir air = MoistAir.ofWetBulb(Temperature.celsius(row.number("entering_dry_bulb_c")),
                        Temperature.celsius(row.number("entering_wet_bulb_c")), StandardAtmosphere.pressure(Altitude.SEA_LEVEL));
                double massFlow = row.number("air_flow_m3_per_s") / air.specificVolume();
                double sensibleHeatRatio = row.number("sensible_heat_ratio");
                double split = sensibleHeatRatio * row.number("capacity_w") / massFlow / air.heatCapacity();
                comparison.point("sea level", BypassFactorCoil.ratedAt(air, new TemperatureDifference(split), sensibleHeatRatio)
                        .ratedBypassFactor(), row.number("bypass_factor"));
            }
        }
    }
}
