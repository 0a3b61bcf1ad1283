package org.longsummer.chain.screening;

import java.util.concurrent.TimeUnit;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.Current;
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

/** Cost of screening one visit: an ordinary one, and one with several findings. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class ScreenerBenchmark {
    private final Unit unit = Visits.unit(13_500, 115);
    private final Visit ordinary = Visits.visit(Visits.ordinary().build());
    private final Visit odd = Visits.visit(Visits.ordinary().amps(new Current(0.1)).ambientDryBulb(Temperature.fahrenheit(70))
            .returnMoisture(new Moisture.WetBulb(Temperature.fahrenheit(66))).build());

    @Benchmark
    public Screening ordinaryVisit() {
        return Screener.screen(unit, ordinary);
    }

    @Benchmark
    public Screening oddVisit() {
        return Screener.screen(unit, odd);
    }
}
