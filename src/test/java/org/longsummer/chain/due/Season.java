package org.longsummer.chain.due;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.season.Climate;
import org.longsummer.chain.season.SeasonClock;
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
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.Voltage;

/** An invented unit and its visits, one after another, judged as they stand. */
final class Season {
    private final List<Visit> visits = new ArrayList<>();
    private Optional<Climate> climate = Optional.empty();

    Season at(Climate somewhere) {
        climate = Optional.of(somewhere);
        return this;
    }

    /** A sound unit's readings on a day. */
    Season sound(String day) {
        return visit(day, 59.3, 12.1, FilterLook.NOT_LOOKED, Set.of());
    }

    Season visit(String day, double supplyF, double amps, FilterLook filter, Set<Work> work) {
        var readings = new ReadingsBuilder().returnDryBulb(Temperature.fahrenheit(79))
                .returnMoisture(new Moisture.Relative(RelativeHumidity.percent(48))).supplyDryBulb(Temperature.fahrenheit(supplyF))
                .ambientDryBulb(Temperature.fahrenheit(93)).ambientAt(AmbientAt.INLET).amps(new Current(amps)).volts(new Voltage(116))
                .runTime(new RunTime(20)).build();
        visits.add(new Visit("V" + visits.size(), "U1", LocalDate.parse(day).atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC), ZoneOffset.UTC,
                "Noor", Instruments.DEFAULT, readings, FanSpeed.HIGH, PowerSource.SHORE, filter, CoilLook.NOT_LOOKED, false, work, ""));
        return this;
    }

    List<Verdict> verdicts() {
        Plate plate = new Plate(Optional.of(CoolingCapacity.btuPerHour(13_500)), Optional.of("R-410A"), Optional.of(new Current(12.4)),
                AmpsKind.INPUT, Optional.of(new Voltage(115)), false, false, Optional.empty());
        Unit unit = new Unit("U1", "Heron 12 front", "Birch Landing", plate, AirDelivery.NON_DUCTED, Optional.empty(), Altitude.feet(800))
                .by(climate.map(SeasonClock::new));
        return Assessment.ofUnit(unit, visits, new Closings());
    }

    NextCheck next() {
        return CheckPlanner.after(verdicts()).orElseThrow();
    }
}
