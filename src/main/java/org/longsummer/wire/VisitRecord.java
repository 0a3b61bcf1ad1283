package org.longsummer.wire;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.SupplyAt;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.Voltage;

/** A visit as JSON, with every bit of its quantities: in SI, named like the columns of the store. */
public final class VisitRecord {
    private VisitRecord() {}

    public static void write(JsonWriter json, Visit visit) {
        json.object(() -> members(json, visit));
    }

    /** The members of a visit, into an object that is open. */
    public static void members(JsonWriter json, Visit visit) {
        json.field("id", visit.id()).field("visited_at_ms", (double) visit.at().toEpochMilli())
                .field("utc_offset_s", visit.offset().getTotalSeconds()).field("technician", visit.technician())
                .field("fan_speed", Boxes.word(visit.fanSpeed())).field("power_source", Boxes.word(visit.powerSource()))
                .field("filter_look", Boxes.word(visit.filter())).field("coil_look", Boxes.word(visit.coil()))
                .field("iced_coil", visit.icedCoil()).texts("work_done", visit.workDone().stream().sorted().map(Boxes::word).toList())
                .field("notes", visit.notes());
        instruments(json, visit.instruments());
        readings(json, visit.readings());
    }

    private static void instruments(JsonWriter json, Instruments meters) {
        json.object("instruments", () -> json.field("probe_u_k", meters.probe().kelvins())
                .field("ambient_probe_u_k", meters.ambientProbe().kelvins()).field("humidity_u", meters.humidity().fraction())
                .field("clamp_relative_u", meters.clampRelative()).field("clamp_floor_u_a", meters.clampFloor().amperes())
                .field("voltage_u_v", meters.voltage().volts()).field("one_probe", meters.oneProbe()));
    }

    private static void readings(JsonWriter json, Readings read) {
        json.field("return_dry_bulb_k", read.returnDryBulb().map(Temperature::kelvins));
        read.returnMoisture().ifPresent(moisture -> moisture(json, moisture));
        json.field("supply_dry_bulb_k", read.supplyDryBulb().map(Temperature::kelvins)).field("supply_at", Boxes.word(read.supplyAt()))
                .field("ambient_dry_bulb_k", read.ambientDryBulb().map(Temperature::kelvins)).field("ambient_at", Boxes.word(read.ambientAt()))
                .field("ambient_relative_humidity", read.ambientHumidity().map(RelativeHumidity::fraction))
                .field("amps_a", read.amps().map(Current::amperes)).field("volts_v", read.volts().map(Voltage::volts))
                .field("run_time_min", read.runTime().map(RunTime::minutes))
                .field("condenser_entering_dry_bulb_k", read.condenserEntering().map(Temperature::kelvins))
                .field("condenser_leaving_dry_bulb_k", read.condenserLeaving().map(Temperature::kelvins))
                .field("room_dry_bulb_k", read.roomDryBulb().map(Temperature::kelvins))
                .field("fan_only_amps_a", read.fanOnlyAmps().map(Current::amperes))
                .field("start_peak_a", read.startPeak().map(Current::amperes))
                .field("capacitor_uf", read.capacitor().map(Capacitance::microfarads));
    }

    private static void moisture(JsonWriter json, Moisture moisture) {
        if (moisture instanceof Moisture.Relative relative) {
            json.field("return_relative_humidity", relative.humidity().fraction());
        } else if (moisture instanceof Moisture.WetBulb wetBulb) {
            json.field("return_wet_bulb_k", wetBulb.temperature().kelvins());
        } else {
            json.field("return_dew_point_k", ((Moisture.DewPoint) moisture).temperature().kelvins());
        }
    }

    /** @param unitId the unit it belongs to, which the record leaves out */
    public static Visit read(Fields json, String unitId) {
        return new Visit(json.text("id"), unitId, Instant.ofEpochMilli((long) json.number("visited_at_ms")),
                ZoneOffset.ofTotalSeconds((int) json.number("utc_offset_s")), json.text("technician"),
                instruments(json.object("instruments")), readings(json),
                json.choice("fan_speed", FanSpeed.values(), FanSpeed.UNKNOWN),
                json.choice("power_source", PowerSource.values(), PowerSource.UNKNOWN),
                json.choice("filter_look", FilterLook.values(), FilterLook.NOT_LOOKED),
                json.choice("coil_look", CoilLook.values(), CoilLook.NOT_LOOKED), json.isTrue("iced_coil"), works(json), json.text("notes"));
    }

    private static Set<Work> works(Fields json) {
        Set<Work> works = EnumSet.noneOf(Work.class);
        json.items("work_done").forEach(word -> works.add(Work.valueOf(word.toString().toUpperCase(Locale.ROOT))));
        return works;
    }

    private static Instruments instruments(Fields json) {
        return new Instruments(new TemperatureDifference(json.number("probe_u_k")),
                new TemperatureDifference(json.number("ambient_probe_u_k")), new RelativeHumidity(json.number("humidity_u")),
                json.number("clamp_relative_u"), new Current(json.number("clamp_floor_u_a")), new Voltage(json.number("voltage_u_v")),
                json.isTrue("one_probe"));
    }

    private static Readings readings(Fields json) {
        return new Readings(json.quantity("return_dry_bulb_k", Temperature::new), moisture(json),
                json.quantity("supply_dry_bulb_k", Temperature::new), json.choice("supply_at", SupplyAt.values(), SupplyAt.UNKNOWN),
                json.quantity("ambient_dry_bulb_k", Temperature::new), json.choice("ambient_at", AmbientAt.values(), AmbientAt.UNKNOWN),
                json.quantity("ambient_relative_humidity", RelativeHumidity::new), json.quantity("amps_a", Current::new),
                json.quantity("volts_v", Voltage::new), json.quantity("run_time_min", RunTime::new),
                json.quantity("condenser_entering_dry_bulb_k", Temperature::new),
                json.quantity("condenser_leaving_dry_bulb_k", Temperature::new), json.quantity("room_dry_bulb_k", Temperature::new),
                json.quantity("fan_only_amps_a", Current::new), json.quantity("start_peak_a", Current::new),
                json.quantity("capacitor_uf", Capacitance::new));
    }

    private static Optional<Moisture> moisture(Fields json) {
        Optional<Moisture> relative = json.quantity("return_relative_humidity", fraction ->
                new Moisture.Relative(new RelativeHumidity(fraction)));
        Optional<Moisture> wetBulb = json.quantity("return_wet_bulb_k", kelvins -> new Moisture.WetBulb(new Temperature(kelvins)));
        Optional<Moisture> dewPoint = json.quantity("return_dew_point_k", kelvins -> new Moisture.DewPoint(new Temperature(kelvins)));
        return relative.or(() -> wetBulb).or(() -> dewPoint);
    }
}
