package org.longsummer.log;

import java.io.PrintStream;

/** Where the log goes: to standard error, and warnings alone, until a server says that it is one. */
public final class LogOutput {
    private static volatile boolean serving;

    private LogOutput() {}

    /** From now on everything goes to standard output, our own events too. */
    public static void serve() {
        serving = true;
    }

    static boolean isServing() {
        return serving;
    }

    static void write(String line) {
        PrintStream out = serving ? System.out : System.err;
        out.println(line);
        out.flush();
    }
}
