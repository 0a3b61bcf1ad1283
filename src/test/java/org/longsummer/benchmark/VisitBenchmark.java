package org.longsummer.benchmark;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.condition.History;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.departure.Observation;
import org.longsummer.chain.expectation.Expectation;
import org.longsummer.chain.expectation.Expecter;
import org.longsummer.chain.expectation.UsualVolts;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.Known;
import org.longsummer.chain.screening.Screener;
import org.longsummer.chain.screening.Screening;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.VisitSketch;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Cost of a visit of a unit with ten earlier ones: each stage by itself, judged in sequence, judged alone from its history, and with
 * the reasons and the next best reading that a page asks for. Single calls are sampled: their median stands also on a busy machine.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 1, jvmArgsAppend = {"-XX:+UseSerialGC", "-Xmx512m"})
public class VisitBenchmark {
    private static final int VISITS = 11;
    private final Unit unit = VisitSketch.unit("bench");
    private final Closings closings = new Closings();
    private final List<Visit> visits = visits(unit);
    private final Visit last = visits.get(VISITS - 1);
    private final Screening screening = Screener.screen(unit, last);
    private final Known known = Known.before(closings, unit, last);
    private final Expectation expectation = Expecter.expect(screening, closings, UsualVolts.UNKNOWN);
    private final History afterTen = afterTen();

    /** One season, three weeks between visits, every second one with looks, the condenser slowly dirtying. */
    private static List<Visit> visits(Unit unit) {
        Random random = new Random(1);
        List<Visit> visits = new ArrayList<>();
        for (int i = 0; i < VISITS; i++) {
            VisitSketch sketch = new VisitSketch().at(LocalDateTime.of(2024, 4, 20, 10, 0).plusDays(18L * i))
                    .returnAir(74 + 6 * random.nextDouble(), 40 + 15 * random.nextDouble()).ambient(80 + 20 * random.nextDouble())
                    .asExpected(unit, 0.04 * random.nextGaussian() - 0.004 * i, 0.015 * random.nextGaussian() + 0.009 * i);
            visits.add((i % 2 == 0 ? sketch.filter(FilterLook.CLEAN).coil(i > 6 ? CoilLook.LIGHT : CoilLook.CLEAN) : sketch)
                    .visit("b" + (100 + i), unit));
        }
        return visits;
    }

    private History afterTen() {
        History history = new History(unit, false);
        visits.subList(0, VISITS - 1).forEach(visit -> history.judge(visit, closings));
        return history;
    }

    @Benchmark
    public Screening screening() {
        return Screener.screen(unit, last);
    }

    @Benchmark
    public Expectation expectation() {
        return Expecter.expect(screening, closings, UsualVolts.UNKNOWN);
    }

    @Benchmark
    public Observation departure() {
        return Observation.of(expectation, known);
    }

    /** Per visit. */
    @Benchmark
    @OperationsPerInvocation(VISITS)
    public Verdict inSequence() {
        History history = new History(unit, false);
        Verdict verdict = null;
        for (Visit visit : visits) {
            verdict = history.judge(visit, closings);
        }
        return verdict;
    }

    /** The eleventh, with a copy of the history of ten. */
    @Benchmark
    public Verdict alone() {
        return afterTen.copy().judge(last, closings);
    }

    /** The eleventh by replaying all, with reasons and the next best reading, as a page asks for it. */
    @Benchmark
    public List<Verdict> withReasons() {
        return Assessment.ofUnit(unit, visits, closings);
    }

    /** Runs these benchmarks and shows what they allocate. */
    public static void main(String[] arguments) throws RunnerException {
        new Runner(new OptionsBuilder().include(VisitBenchmark.class.getName()).addProfiler(GCProfiler.class).build()).run();
    }
}
