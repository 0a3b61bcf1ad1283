package org.longsummer.files;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
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

/** A visit as bytes and back, exactly; the unit is kept beside them. Only for this run: the order of the parts is no file format. */
final class VisitBytes {
    private static final byte NO_MOISTURE = 0;
    private static final byte RELATIVE = 1;
    private static final byte WET_BULB = 2;
    private static final byte DEW_POINT = 3;
    private static final SupplyAt[] SUPPLY_AT = SupplyAt.values();
    private static final AmbientAt[] AMBIENT_AT = AmbientAt.values();
    private static final FanSpeed[] FAN_SPEED = FanSpeed.values();
    private static final PowerSource[] POWER_SOURCE = PowerSource.values();
    private static final FilterLook[] FILTER = FilterLook.values();
    private static final CoilLook[] COIL = CoilLook.values();
    private static final Work[] WORK = Work.values();

    private ByteBuffer bytes = ByteBuffer.allocate(1 << 12);

    /** The bytes of a visit, from position to limit; good until the next call. */
    ByteBuffer of(Visit visit) {
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
        return bytes.flip();
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
        number(readings.returnDryBulb().map(Temperature::kelvins));
        moisture(readings.returnMoisture().orElse(null));
        number(readings.supplyDryBulb().map(Temperature::kelvins));
        choice(readings.supplyAt());
        number(readings.ambientDryBulb().map(Temperature::kelvins));
        choice(readings.ambientAt());
        number(readings.ambientHumidity().map(RelativeHumidity::fraction));
        number(readings.amps().map(Current::amperes));
        number(readings.volts().map(Voltage::volts));
        number(readings.runTime().map(RunTime::minutes));
        number(readings.condenserEntering().map(Temperature::kelvins));
        number(readings.condenserLeaving().map(Temperature::kelvins));
        number(readings.roomDryBulb().map(Temperature::kelvins));
        number(readings.fanOnlyAmps().map(Current::amperes));
        number(readings.startPeak().map(Current::amperes));
        number(readings.capacitor().map(Capacitance::microfarads));
    }

    private void moisture(Moisture moisture) {
        if (moisture instanceof Moisture.Relative relative) {
            bytes.put(RELATIVE).putDouble(relative.humidity().fraction());
        } else if (moisture instanceof Moisture.WetBulb wetBulb) {
            bytes.put(WET_BULB).putDouble(wetBulb.temperature().kelvins());
        } else if (moisture instanceof Moisture.DewPoint dewPoint) {
            bytes.put(DEW_POINT).putDouble(dewPoint.temperature().kelvins());
        } else {
            bytes.put(NO_MOISTURE);
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

    private static <T> Optional<T> numberOf(ByteBuffer in, DoubleFunction<T> make) {
        return in.get() == 1 ? Optional.of(make.apply(in.getDouble())) : Optional.empty();
    }

    private static Readings readingsOf(ByteBuffer in) {
        return new Readings(numberOf(in, Temperature::new), moistureOf(in), numberOf(in, Temperature::new), SUPPLY_AT[in.get()],
                numberOf(in, Temperature::new), AMBIENT_AT[in.get()], numberOf(in, RelativeHumidity::new), numberOf(in, Current::new),
                numberOf(in, Voltage::new), numberOf(in, RunTime::new), numberOf(in, Temperature::new), numberOf(in, Temperature::new),
                numberOf(in, Temperature::new), numberOf(in, Current::new), numberOf(in, Current::new), numberOf(in, Capacitance::new));
    }

    private static Optional<Moisture> moistureOf(ByteBuffer in) {
        return switch (in.get()) {
            case RELATIVE -> Optional.of(new Moisture.Relative(new RelativeHumidity(in.getDouble())));
            case WET_BULB -> Optional.of(new Moisture.WetBulb(new Temperature(in.getDouble())));
            case DEW_POINT -> Optional.of(new Moisture.DewPoint(new Temperature(in.getDouble())));
            default -> Optional.empty();
        };
    }

    private static Instruments instrumentsOf(ByteBuffer in) {
        return in.get() == 1 ? Instruments.DEFAULT : new Instruments(new TemperatureDifference(in.getDouble()),
                new TemperatureDifference(in.getDouble()), new RelativeHumidity(in.getDouble()), in.getDouble(),
                new Current(in.getDouble()), new Voltage(in.getDouble()), in.get() == 1);
    }
}
