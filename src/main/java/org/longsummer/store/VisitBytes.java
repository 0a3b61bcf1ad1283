package org.longsummer.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
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
import org.longsummer.quantity.UnitSystem;
import org.longsummer.quantity.Voltage;

/** A visit as bytes and back, exactly; the unit is kept beside them. Only for this run: the order of the parts is no file format. */
final class VisitBytes {
    private static final SupplyAt[] SUPPLY_AT = SupplyAt.values();
    private static final AmbientAt[] AMBIENT_AT = AmbientAt.values();
    private static final FanSpeed[] FAN_SPEED = FanSpeed.values();
    private static final PowerSource[] POWER_SOURCE = PowerSource.values();
    private static final FilterLook[] FILTER = FilterLook.values();
    private static final CoilLook[] COIL = CoilLook.values();
    private static final Work[] WORK = Work.values();
    private static final UnitSystem[] SYSTEM = UnitSystem.values();

    private ByteBuffer bytes = ByteBuffer.allocate(1 << 12);

    /** The bytes of a visit, from position to limit; good until the next call. */
    ByteBuffer of(Visit visit) {
        put(visit);
        return bytes.flip();
    }

    /** The same with all that is to be stored of it. */
    ByteBuffer of(Entry entry) {
        put(entry.visit());
        text(entry.typed().lines());
        text(entry.savedBy());
        text(entry.correction().map(Correction::correctsId).orElse(""));
        text(entry.correction().map(Correction::reason).orElse(""));
        room(2);
        choice(entry.typed().system());
        bytes.put((byte) (entry.correction().isPresent() ? 1 : 0));
        return bytes.flip();
    }

    private void put(Visit visit) {
        bytes.clear();
        text(visit.id());
        text(visit.technician());
        text(visit.notes());
        room(256);
        bytes.putLong(visit.at().getEpochSecond()).putInt(visit.at().getNano()).putInt(visit.offset().getTotalSeconds());
        choice(visit.fanSpeed());
        choice(visit.powerSource());
        choice(visit.filter());
        choice(visit.coil());
        bytes.put((byte) (visit.icedCoil() ? 1 : 0));
        int works = 0;
        for (Work work : visit.workDone()) {
            works |= 1 << work.ordinal();
        }
        bytes.putInt(works);
        readings(visit.readings());
        instruments(visit.instruments());
    }

    private void room(int more) {
        if (bytes.remaining() < more) {
            bytes = ByteBuffer.allocate(2 * (bytes.capacity() + more)).put(bytes.flip());
        }
    }

    private void text(String text) {
        byte[] letters = text.getBytes(StandardCharsets.UTF_8);
        room(letters.length + 4);
        bytes.putInt(letters.length).put(letters);
    }

    private void choice(Enum<?> value) {
        bytes.put((byte) value.ordinal());
    }

    private void number(Optional<Double> number) {
        bytes.put((byte) (number.isPresent() ? 1 : 0));
        if (number.isPresent()) {
            bytes.putDouble(number.get());
        }
    }

    private void readings(Readings readings) {
        choice(readings.supplyAt());
        choice(readings.ambientAt());
        for (Reading<?> reading : Reading.ALL) {
            number(reading.recordedIn(readings));
        }
    }

    private void instruments(Instruments i) {
        boolean usual = i.equals(Instruments.DEFAULT);
        bytes.put((byte) (usual ? 1 : 0));
        if (!usual) {
            bytes.putDouble(i.probe().kelvins()).putDouble(i.ambientProbe().kelvins()).putDouble(i.humidity().fraction())
                    .putDouble(i.clampRelative()).putDouble(i.clampFloor().amperes()).putDouble(i.voltage().volts())
                    .put((byte) (i.oneProbe() ? 1 : 0));
        }
    }

    /** The visit whose bytes begin at the buffer's position. */
    static Visit read(ByteBuffer in, String unitId) {
        String id = textOf(in);
        String technician = textOf(in);
        String notes = textOf(in);
        Instant at = Instant.ofEpochSecond(in.getLong(), in.getInt());
        ZoneOffset offset = ZoneOffset.ofTotalSeconds(in.getInt());
        FanSpeed fanSpeed = FAN_SPEED[in.get()];
        PowerSource powerSource = POWER_SOURCE[in.get()];
        FilterLook filter = FILTER[in.get()];
        CoilLook coil = COIL[in.get()];
        boolean iced = in.get() == 1;
        Set<Work> works = worksOf(in.getInt());
        Readings readings = readingsOf(in);
        return new Visit(id, unitId, at, offset, technician, instrumentsOf(in), readings, fanSpeed, powerSource, filter, coil, iced, works,
                notes);
    }

    /** The same with all that is to be stored of it, where it was written so. */
    static Entry readEntry(ByteBuffer in, String unitId) {
        Visit visit = read(in, unitId);
        String typed = textOf(in);
        String savedBy = textOf(in);
        Correction correction = new Correction(textOf(in), textOf(in));
        UnitSystem system = SYSTEM[in.get()];
        return new Entry(visit, Typed.ofLines(system, typed), savedBy, in.get() == 1 ? Optional.of(correction) : Optional.empty());
    }

    static String readId(ByteBuffer in) {
        return textOf(in);
    }

    private static String textOf(ByteBuffer in) {
        int length = in.getInt();
        if (length == 0) {
            return "";
        }
        byte[] letters = new byte[length];
        in.get(letters);
        return new String(letters, StandardCharsets.UTF_8);
    }

    private static Set<Work> worksOf(int mask) {
        if (mask == 0) {
            return Set.of();
        }
        Set<Work> works = EnumSet.noneOf(Work.class);
        for (Work work : WORK) {
            if ((mask & 1 << work.ordinal()) != 0) {
                works.add(work);
            }
        }
        return Collections.unmodifiableSet(works);
    }

    private static Readings readingsOf(ByteBuffer in) {
        ReadingsBuilder readings = new ReadingsBuilder().supplyAt(SUPPLY_AT[in.get()]).ambientAt(AMBIENT_AT[in.get()]);
        for (Reading<?> reading : Reading.ALL) {
            if (in.get() == 1) {
                reading.takeRecorded(readings, in.getDouble());
            }
        }
        return readings.build();
    }

    private static Instruments instrumentsOf(ByteBuffer in) {
        return in.get() == 1 ? Instruments.DEFAULT : new Instruments(new TemperatureDifference(in.getDouble()),
                new TemperatureDifference(in.getDouble()), new RelativeHumidity(in.getDouble()), in.getDouble(),
                new Current(in.getDouble()), new Voltage(in.getDouble()), in.get() == 1);
    }
}
