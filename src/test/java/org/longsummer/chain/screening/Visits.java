package org.longsummer.chain.screening;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.Voltage;

/** An ordinary unit and an ordinary visit on a summer's day, to be spoilt in one place at a time. */
final class Visits {
    private Visits() {}

    static ReadingsBuilder ordinary() {
        return new ReadingsBuilder().returnDryBulb(fahrenheit(79)).supplyDryBulb(fahrenheit(59)).ambientDryBulb(fahrenheit(93))
                .ambientAt(AmbientAt.INLET).returnMoisture(new Moisture.Relative(RelativeHumidity.percent(48)))
                .amps(new Current(12.1)).volts(new Voltage(116)).runTime(new RunTime(20));
    }

    static Temperature fahrenheit(double degrees) {
        return Temperature.fahrenheit(degrees);
    }

    static Unit unit(double btuPerHour, double ratedVolts) {
        return unit(new Plate(Optional.of(CoolingCapacity.btuPerHour(btuPerHour)), Optional.of("R-410A"), Optional.empty(), AmpsKind.UNKNOWN,
                Optional.of(new Voltage(ratedVolts)), false, false, Optional.empty()));
    }

    static Unit unit(Plate plate) {
        return new Unit("U1", "Heron 12 front", "Birch Landing", plate, AirDelivery.DUCTED, Optional.empty(), Altitude.feet(800));
    }

    static Visit visit(Readings readings) {
        return visit(readings, FanSpeed.HIGH, PowerSource.SHORE, false);
    }

    static Visit visit(Readings readings, FanSpeed speed, PowerSource power, boolean iced) {
        return new Visit("V1", "U1", Instant.parse("2031-07-04T18:00:00Z"), ZoneOffset.ofHours(-5), "Noor", Instruments.DEFAULT, readings,
                speed, power, FilterLook.CLEAN, CoilLook.CLEAN, iced, Set.of(), "");
    }

    static Screening screen(ReadingsBuilder readings) {
        return Screener.screen(unit(13_500, 115), visit(readings.build()));
    }
}
