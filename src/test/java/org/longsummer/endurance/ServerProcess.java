package org.longsummer.endurance;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Longsummer as people run it: a process of its own, of this build's classes or, with {@code -Dlongsummer.jar=FILE}, of a jar. */
final class ServerProcess implements AutoCloseable {
    private static final String READY = "Longsummer is ready at ";
    private static final long PATIENCE_SECONDS = 120;

    private final Process process;
    private final List<String> output = Collections.synchronizedList(new ArrayList<>());
    private final List<String> errors = Collections.synchronizedList(new ArrayList<>());
    private final List<Thread> readers;

    private ServerProcess(List<String> command) {
        try {
            process = new ProcessBuilder(command).start();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        readers = List.of(reading(process.getInputStream(), output), reading(process.getErrorStream(), errors));
    }

    /** A command's end: its exit code and what it said. */
    record Outcome(int exitCode, String output, String errors) {}

    /** Serves a record on any free port; returns when it is ready. */
    static ServerProcess serving(Path data, String... more) {
        return serving(List.of(), data, more);
    }

    /** The same, started by another program, such as a shell that sets limits. */
    static ServerProcess serving(List<String> starter, Path data, String... more) {
        ServerProcess server = new ServerProcess(command(starter, Stream.concat(
                Stream.of("serve", "--data", data.toString(), "--port", "0"), Stream.of(more)).toList()));
        try {
            server.address();
            return server;
        } catch (IllegalStateException e) {
            server.close();
            throw e;
        }
    }

    /** Runs a command to its end. */
    static Outcome run(String... arguments) {
        return begin(arguments).outcome();
    }

    /** Starts a command and does not wait for it. */
    static ServerProcess begin(String... arguments) {
        return new ServerProcess(command(List.of(), List.of(arguments)));
    }

    private static List<String> command(List<String> starter, List<String> arguments) {
        String jar = System.getProperty("longsummer.jar", "");
        List<String> program = jar.isEmpty() ? List.of("-cp", System.getProperty("java.class.path"), "org.longsummer.Longsummer")
                : List.of("-jar", jar);
        return Stream.of(starter.stream(), Stream.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx256m",
                "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"), program.stream(), arguments.stream()).flatMap(part -> part).toList();
    }

    private static Thread reading(InputStream stream, List<String> lines) {
        Thread reader = new Thread(() -> {
            try (BufferedReader text = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
                for (String line = text.readLine(); line != null; line = text.readLine()) {
                    lines.add(line);
                }
            } catch (IOException e) {
                lines.add("(its output ended: " + e.getMessage() + ")");
            }
        });
        reader.setDaemon(true);
        reader.start();
        return reader;
    }

    /** Where it listens, without a slash at the end. */
    String address() {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
        while (System.nanoTime() < end) {
            Optional<String> ready = line(READY);
            if (ready.isPresent()) {
                return ready.get().substring(READY.length()).replaceFirst("/$", "");
            }
            if (!process.isAlive()) {
                Outcome outcome = outcome();
                throw new IllegalStateException("ended with " + outcome.exitCode() + ": " + outcome.output() + outcome.errors());
            }
            pause(20);
        }
        throw new IllegalStateException("not ready after " + PATIENCE_SECONDS + " s: " + output + errors);
    }

    private Optional<String> line(String start) {
        synchronized (output) {
            return output.stream().filter(line -> line.startsWith(start)).findFirst();
        }
    }

    Caller caller() {
        return new Caller(address());
    }

    /** What it has said so far on standard output. */
    List<String> output() {
        synchronized (output) {
            return List.copyOf(output);
        }
    }

    long id() {
        return process.pid();
    }

    /** As {@code kill -9} does: it learns nothing of it. */
    void kill() {
        process.toHandle().destroyForcibly();
        outcome();
    }

    /** As {@code kill} and a service's stop do; what it says until its end is still read. The process ends when it has ended its work. */
    void terminate() {
        process.toHandle().destroy();
    }

    /** Waits for its end. */
    Outcome outcome() {
        try {
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new IllegalStateException("still running after " + PATIENCE_SECONDS + " s: " + output + errors);
            }
            for (Thread reader : readers) {
                reader.join(TimeUnit.SECONDS.toMillis(10));
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        return new Outcome(process.exitValue(), joined(output), joined(errors));
    }

    private static String joined(List<String> lines) {
        synchronized (lines) {
            return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
        }
    }

    static void pause(long milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
