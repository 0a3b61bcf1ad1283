package org.longsummer.science.moistair;

import java.util.concurrent.TimeUnit;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Pressure;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Cost of a state of moist air and of its inversions; one visit asks for some dozens of them. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class MoistAirBenchmark {
    private static final int STATES = 256;
    private final MoistAir[] states = new MoistAir[STATES];
    private final double[] enthalpies = new double[STATES];
    private int next;

    /** Room states between sea level and 5,000 ft. */
    public MoistAirBenchmark() {
        for (int i = 0; i < STATES; i++) {
            states[i] = MoistAir.of(Temperature.fahrenheit(65 + i % 31), RelativeHumidity.percent(15 + i % 71),
                    StandardAtmosphere.pressure(Altitude.feet(i * 20)));
            enthalpies[i] = states[i].enthalpy() - 20_000;
        }
    }

    private MoistAir state() {
        next = (next + 1) % STATES;
        return states[next];
    }

    @Benchmark
    public double saturationPressure() {
        return HylandWexler1983.saturationPressure(state().dryBulb()).pascals();
    }

    @Benchmark
    public double wetBulb() {
        return state().wetBulb().kelvins();
    }

    @Benchmark
    public double dewPoint() {
        return state().dewPoint().kelvins();
    }

    @Benchmark
    public double saturatedAtEnthalpy() {
        Pressure pressure = state().pressure();
        return MoistAir.saturatedAtEnthalpy(enthalpies[next], pressure).dryBulb().kelvins();
    }
}
