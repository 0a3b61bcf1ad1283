package org.longsummer.demo;

import static org.longsummer.demo.Fault.CAPACITOR;
import static org.longsummer.demo.Fault.COMPRESSOR_WEAR;
import static org.longsummer.demo.Fault.CONDENSER_FOULING;
import static org.longsummer.demo.Fault.DIVIDER_LEAK;
import static org.longsummer.demo.Fault.EVAPORATOR_COIL;
import static org.longsummer.demo.Fault.FAN_DRAG;
import static org.longsummer.demo.Fault.FILTER;
import static org.longsummer.demo.Fault.REFRIGERANT_LOSS;
import static org.longsummer.demo.Story.of;
import static org.longsummer.demo.Story.sound;

import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import org.longsummer.demo.Story.Job;
import org.longsummer.demo.Story.Kit;

/** The invented rental fleet: three depots and the story of each unit. */
final class DemoUnits {
    static final Place FERROW_FLATS = new Place("Ferrow Flats", 2_300, ZoneId.of("America/Denver"), new Climate(86, 30, 11, 49),
            technicians("Ines", "Otto"));
    static final Place LAKE_ORRIN = new Place("Lake Orrin", 640, ZoneId.of("America/Chicago"), new Climate(80, 32, 8, 67),
            technicians("Brannoch", "Sunniva"));
    static final Place SALTMARCH_POINT = new Place("Saltmarch Point", 15, ZoneId.of("America/New_York"), new Climate(82, 22, 6, 71),
            technicians("Teodor", "Ines"));

    /** Every condition is somewhere; so is each mistake, and what an owner with a kitchen thermometer can tell. */
    static final List<Story> FERROW_STORIES = List.of(
            of(CONDENSER_FOULING, 0.6, 0.55), of(CONDENSER_FOULING, 0.2, 0.7, new Job(1.55, "condenser_coil", true)),
            sound(), sound().withSlip(5, Slip.CELSIUS), of(COMPRESSOR_WEAR, 0.8, 0.62, new Job(2.6, "unit_replaced", true)),
            sound(), sound().withSlip(3, Slip.CLAMP_AROUND_BOTH), of(REFRIGERANT_LOSS, 1.6, 0.32), sound().visited(3),
            of(CAPACITOR, 0.7, 0.8, new Job(2.3, "condenser_coil", false), new Job(2.6, "capacitor", true)),
            sound().withSlip(10, Slip.SHORT_RUN), sound(), of(DIVIDER_LEAK, 1.5, 0.38), sound().visited(2),
            sound().withKit(Kit.NO_HUMIDITY), Story.neverChecked());
    static final List<Story> ORRIN_STORIES = List.of(
            of(FILTER, 0.1, 0.8, new Job(1.4, "filter", true)), of(EVAPORATOR_COIL, 0.9, 0.75), sound(),
            of(REFRIGERANT_LOSS, 1.1, 0.7, new Job(2.35, "both_coils", false)), sound().withSlip(7, Slip.SWAPPED), sound(),
            of(CONDENSER_FOULING, 1.5, 0.33), sound().withSlip(11, Slip.CLAMP_AROUND_CORD), of(COMPRESSOR_WEAR, 1.3, 0.75),
            sound().visited(3), of(FAN_DRAG, 1.4, 0.28), sound().withKit(Kit.THERMOMETER).visited(3),
            sound().withSlip(4, Slip.SAVED_TWICE), sound().visited(2));
    static final List<Story> SALTMARCH_STORIES = List.of(
            of(CONDENSER_FOULING, 0.4, 0.5, new Job(1.6, "both_coils+filter", true)), sound().withSlip(6, Slip.DECIMAL),
            of(CAPACITOR, 1.5, 0.46), sound(), of(DIVIDER_LEAK, 0.8, 0.8, new Job(1.9, "divider", true)), sound().withSlip(8, Slip.FAN_LOW),
            of(FILTER, 1.9, 0.8), sound().visited(3), of(EVAPORATOR_COIL, 1.5, 0.6), sound().visited(1));

    private DemoUnits() {}

    private static List<Technician> technicians(String... names) {
        return Arrays.stream(names).map(Technician::new).toList();
    }
}
