package org.longsummer.benchmark;

import org.junit.jupiter.api.Test;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs benchmarks from the build tool: {@code mvn -B test -Dtest=Benchmarks -Dbenchmark=VisitBenchmark}; without a name all of them. No part of the
 * build's tests, and nothing is asserted.
 */
class Benchmarks {
    @Test
    void run() throws RunnerException {
        new Runner(new OptionsBuilder().include(System.getProperty("benchmark", "Benchmark")).addProfiler(GCProfiler.class).build()).run();
    }
}
