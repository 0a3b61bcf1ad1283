package org.longsummer.quantity;

import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;

/**
 * The numbers for a quantity: the one that is recorded and the one that people write.
 *
 * @param ending what the name of a recorded number ends in: its unit
 * @param ofRecorded the quantity of a recorded number
 * @param recorded the number to record, with every bit
 * @param symbol the unit that people write it in; for temperatures °F, beside which °C is always taken too
 * @param ofWritten the quantity of a written number
 * @param written the number to write
 * @param least written numbers below it are no mistake of reading but no number of this kind
 * @param most the same above it
 */
public record Measure<Q extends Quantity>(String ending, DoubleFunction<Q> ofRecorded, ToDoubleFunction<Q> recorded, String symbol,
        DoubleFunction<Q> ofWritten, ToDoubleFunction<Q> written, double least, double most) {
    public static final Measure<Temperature> TEMPERATURE = new Measure<>("_k", Temperature::new, Temperature::kelvins, "°F",
            Temperature::fahrenheit, Temperature::fahrenheit, -400, 2000);
    public static final Measure<RelativeHumidity> HUMIDITY = new Measure<>("", RelativeHumidity::new, RelativeHumidity::fraction, "%",
            RelativeHumidity::percent, RelativeHumidity::percent, -1000, 1000);
    public static final Measure<Current> CURRENT = new Measure<>("_a", Current::new, Current::amperes, "A", Current::new, Current::amperes,
            -10_000, 10_000);
    public static final Measure<Voltage> VOLTAGE = new Measure<>("_v", Voltage::new, Voltage::volts, "V", Voltage::new, Voltage::volts,
            -10_000, 10_000);
    public static final Measure<RunTime> RUN_TIME = new Measure<>("_min", RunTime::new, RunTime::minutes, "min", RunTime::new,
            RunTime::minutes, 0, 100_000);
    public static final Measure<Capacitance> CAPACITANCE = new Measure<>("_uf", Capacitance::new, Capacitance::microfarads, "µF",
            Capacitance::new, Capacitance::microfarads, 0, 10_000);
}
