package org.longsummer.chain.visit;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Measure;
import org.longsummer.quantity.Quantity;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.RunTime;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.Voltage;

/**
 * One of the numbers that may be read at a visit: what it is called and where it stands among {@link Readings}. Files, forms and the
 * record go through {@link #ALL} and need to know no reading by name.
 */
public final class Reading<Q extends Quantity> {
    public static final Reading<Temperature> RETURN_DRY_BULB = of("return_db", "return_dry_bulb", Measure.TEMPERATURE,
            Readings::returnDryBulb, ReadingsBuilder::returnDryBulb);
    public static final Reading<RelativeHumidity> RETURN_RELATIVE_HUMIDITY = moisture("return_rh_pct", "return_relative_humidity",
            Measure.HUMIDITY, m -> m instanceof Moisture.Relative relative ? Optional.of(relative.humidity()) : Optional.empty(),
            Moisture.Relative::new);
    public static final Reading<Temperature> RETURN_WET_BULB = moisture("return_wb", "return_wet_bulb", Measure.TEMPERATURE,
            m -> m instanceof Moisture.WetBulb wet ? Optional.of(wet.temperature()) : Optional.empty(), Moisture.WetBulb::new);
    public static final Reading<Temperature> RETURN_DEW_POINT = moisture("return_dp", "return_dew_point", Measure.TEMPERATURE,
            m -> m instanceof Moisture.DewPoint dew ? Optional.of(dew.temperature()) : Optional.empty(), Moisture.DewPoint::new);
    public static final Reading<Temperature> SUPPLY_DRY_BULB = of("supply_db", "supply_dry_bulb", Measure.TEMPERATURE,
            Readings::supplyDryBulb, ReadingsBuilder::supplyDryBulb);
    public static final Reading<Temperature> AMBIENT_DRY_BULB = of("ambient_db", "ambient_dry_bulb", Measure.TEMPERATURE,
            Readings::ambientDryBulb, ReadingsBuilder::ambientDryBulb);
    public static final Reading<RelativeHumidity> AMBIENT_RELATIVE_HUMIDITY = of("ambient_rh_pct", "ambient_relative_humidity",
            Measure.HUMIDITY, Readings::ambientHumidity, ReadingsBuilder::ambientHumidity);
    public static final Reading<Current> AMPS = of("amps", "amps", Measure.CURRENT, Readings::amps, ReadingsBuilder::amps);
    public static final Reading<Voltage> VOLTS = of("volts", "volts", Measure.VOLTAGE, Readings::volts, ReadingsBuilder::volts);
    public static final Reading<RunTime> RUN_TIME = of("run_minutes", "run_time", Measure.RUN_TIME, Readings::runTime,
            ReadingsBuilder::runTime);
    public static final Reading<Temperature> CONDENSER_ENTERING = of("condenser_entering_db", "condenser_entering_dry_bulb",
            Measure.TEMPERATURE, Readings::condenserEntering, ReadingsBuilder::condenserEntering);
    public static final Reading<Temperature> CONDENSER_LEAVING = of("condenser_leaving_db", "condenser_leaving_dry_bulb",
            Measure.TEMPERATURE, Readings::condenserLeaving, ReadingsBuilder::condenserLeaving);
    public static final Reading<Temperature> ROOM_DRY_BULB = of("room_db", "room_dry_bulb", Measure.TEMPERATURE, Readings::roomDryBulb,
            ReadingsBuilder::roomDryBulb);
    public static final Reading<Temperature> RETURN_SECOND_DRY_BULB = of("return_second_db", "return_second_dry_bulb", Measure.TEMPERATURE,
            Readings::returnSecondDryBulb, ReadingsBuilder::returnSecondDryBulb);
    public static final Reading<Current> FAN_ONLY_AMPS = of("fan_only_amps", "fan_only_amps", Measure.CURRENT, Readings::fanOnlyAmps,
            ReadingsBuilder::fanOnlyAmps);
    public static final Reading<Current> START_PEAK = of("start_amps", "start_peak", Measure.CURRENT, Readings::startPeak,
            ReadingsBuilder::startPeak);
    public static final Reading<Capacitance> CAPACITOR = of("capacitor_uf", "capacitor", Measure.CAPACITANCE, Readings::capacitor,
            ReadingsBuilder::capacitor);

    /** In the order in which they stand in files and lists. */
    public static final List<Reading<?>> ALL = List.of(RETURN_DRY_BULB, RETURN_RELATIVE_HUMIDITY, RETURN_WET_BULB, RETURN_DEW_POINT,
            SUPPLY_DRY_BULB, AMBIENT_DRY_BULB, AMBIENT_RELATIVE_HUMIDITY, AMPS, VOLTS, RUN_TIME, CONDENSER_ENTERING, CONDENSER_LEAVING,
            ROOM_DRY_BULB, RETURN_SECOND_DRY_BULB, FAN_ONLY_AMPS, START_PEAK, CAPACITOR);

    /** The names of all their columns and boxes. */
    public static final List<String> NAMES = ALL.stream().flatMap(reading -> reading.names().stream()).toList();

    private final String name;
    private final String recordName;
    private final Measure<Q> measure;
    private final Function<Readings, Optional<Q>> taken;
    private final BiConsumer<ReadingsBuilder, Q> take;

    private Reading(String name, String recordName, Measure<Q> measure, Function<Readings, Optional<Q>> taken,
            BiConsumer<ReadingsBuilder, Q> take) {
        this.name = name;
        this.recordName = recordName + measure.ending();
        this.measure = measure;
        this.taken = taken;
        this.take = take;
    }

    private static <Q extends Quantity> Reading<Q> of(String name, String recordName, Measure<Q> measure,
            Function<Readings, Optional<Q>> taken, BiConsumer<ReadingsBuilder, Q> take) {
        return new Reading<>(name, recordName, measure, taken, take);
    }

    /** The chain takes one form of humidity: of several that were read, the first of the list. */
    private static <Q extends Quantity> Reading<Q> moisture(String name, String recordName, Measure<Q> measure,
            Function<Moisture, Optional<Q>> taken, Function<Q, Moisture> make) {
        return new Reading<>(name, recordName, measure, readings -> readings.returnMoisture().flatMap(taken),
                (builder, quantity) -> builder.orReturnMoisture(make.apply(quantity)));
    }

    /** Its column in files and its box in forms; a temperature's has one ending in {@code _f} and one in {@code _c}. */
    public String name() {
        return name;
    }

    /** The names of its columns and boxes. */
    public List<String> names() {
        return isTemperature() ? List.of(name + "_f", name + "_c") : List.of(name);
    }

    /** What the record and devices among themselves call its number. */
    public String recordName() {
        return recordName;
    }

    public Measure<Q> measure() {
        return measure;
    }

    public boolean isTemperature() {
        return measure.equals(Measure.TEMPERATURE);
    }

    /** What was read; empty when it was not. */
    public Optional<Q> in(Readings readings) {
        return taken.apply(readings);
    }

    /** The number to record; empty when it was not read. */
    public Optional<Double> recordedIn(Readings readings) {
        return in(readings).map(measure.recorded()::applyAsDouble);
    }

    /** Takes a number of the record. */
    public void takeRecorded(ReadingsBuilder builder, double number) {
        take.accept(builder, measure.ofRecorded().apply(number));
    }

    /** Takes a number as people write it. */
    public void takeWritten(ReadingsBuilder builder, double number) {
        take.accept(builder, measure.ofWritten().apply(number));
    }

    /** Takes it over from other readings, where it was read. */
    public void copy(Readings from, ReadingsBuilder builder) {
        in(from).ifPresent(quantity -> take.accept(builder, quantity));
    }
}
