package org.longsummer.wire;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Reading;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.SupplyAt;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
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
        instruments(json.name("instruments"), visit.instruments());
        readings(json, visit.readings());
    }

    /** Standard uncertainties of somebody's instruments, as an object. */
    public static void instruments(JsonWriter json, Instruments meters) {
        json.object(() -> json.field("probe_u_k", meters.probe().kelvins())
                .field("ambient_probe_u_k", meters.ambientProbe().kelvins()).field("humidity_u", meters.humidity().fraction())
                .field("clamp_relative_u", meters.clampRelative()).field("clamp_floor_u_a", meters.clampFloor().amperes())
                .field("voltage_u_v", meters.voltage().volts()).field("one_probe", meters.oneProbe()));
    }

    private static void readings(JsonWriter json, Readings read) {
        Reading.ALL.forEach(reading -> json.field(reading.recordName(), reading.recordedIn(read)));
        json.field("supply_at", Boxes.word(read.supplyAt())).field("ambient_at", Boxes.word(read.ambientAt()));
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

    /** The way back of {@link #instruments(JsonWriter, Instruments)}. */
    public static Instruments instruments(Fields json) {
        return new Instruments(new TemperatureDifference(json.number("probe_u_k")),
                new TemperatureDifference(json.number("ambient_probe_u_k")), new RelativeHumidity(json.number("humidity_u")),
                json.number("clamp_relative_u"), new Current(json.number("clamp_floor_u_a")), new Voltage(json.number("voltage_u_v")),
                json.isTrue("one_probe"));
    }

    private static Readings readings(Fields json) {
        ReadingsBuilder read = new ReadingsBuilder().supplyAt(json.choice("supply_at", SupplyAt.values(), SupplyAt.UNKNOWN))
                .ambientAt(json.choice("ambient_at", AmbientAt.values(), AmbientAt.UNKNOWN));
        for (Reading<?> reading : Reading.ALL) {
            json.optionalNumber(reading.recordName()).ifPresent(number -> reading.takeRecorded(read, number));
        }
        return read.build();
    }
}
