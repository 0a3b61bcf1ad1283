package org.longsummer;

import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;
import org.longsummer.files.Progress;

/** Says on standard error how far long work has come; short work passes without a word. */
final class PrintedProgress implements Progress {
    private static final long EVERY = TimeUnit.SECONDS.toNanos(2);

    private final PrintWriter out;
    private String current = "";
    private long steps;
    private long lastSaid = System.nanoTime();

    PrintedProgress(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void step(String what) {
        if (!what.equals(current)) {
            current = what;
            steps = 0;
        }
        steps++;
        long now = System.nanoTime();
        if (now - lastSaid > EVERY) {
            lastSaid = now;
            out.println(what + ": " + steps);
        }
    }
}
