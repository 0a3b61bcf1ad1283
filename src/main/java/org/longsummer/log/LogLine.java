package org.longsummer.log;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.slf4j.event.KeyValuePair;
import org.slf4j.event.Level;

/** One event as one line of JSON (RFC 8259). */
final class LogLine {
    private static final String DATABASE = "org.sqlite.";
    private static final int FRAMES = 30;
    private static final int DEEPEST = 8;

    private final StringBuilder text = new StringBuilder("{");

    private LogLine() {}

    /**
     * The line of an event.
     *
     * @param source who says it; empty for our own events
     */
    static String of(Instant at, Level level, String source, String event, List<KeyValuePair> pairs, Throwable failure) {
        LogLine line = new LogLine();
        line.put("at", at.toString());
        line.put("level", level.toString().toLowerCase(Locale.ROOT));
        if (!source.isEmpty()) {
            line.put("source", source);
        }
        line.put("event", event);
        pairs.forEach(pair -> line.put(pair.key, pair.value));
        if (failure != null) {
            line.put("failure", failures(failure));
            line.put("frames", frames(failure));
        }
        return line.text.append('}').toString();
    }

    private void put(String name, Object value) {
        text.append(text.length() > 1 ? "," : "").append(quoted(name)).append(':')
                .append(value instanceof Number || value instanceof Boolean ? value.toString() : quoted(String.valueOf(value)));
    }

    static String quoted(String words) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            if (c == '"' || c == '\\') {
                quoted.append('\\').append(c);
            } else if (c < ' ' || c == '\u2028' || c == '\u2029' || c == '\u007f' || Character.isSurrogate(c)) {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }

    /** Kinds of failures; the words only of disk and database, since others may repeat what a person typed. */
    private static String failures(Throwable failure) {
        StringBuilder kinds = new StringBuilder();
        Throwable cause = failure;
        for (int depth = 0; cause != null && depth < DEEPEST; depth++) {
            kinds.append(kinds.isEmpty() ? "" : " < ").append(cause.getClass().getName());
            if (cause instanceof IOException || cause.getClass().getName().startsWith(DATABASE)) {
                kinds.append(": ").append(cause.getMessage());
            }
            cause = cause.getCause();
        }
        return kinds.toString();
    }

    /** Where the innermost failure happened. */
    private static String frames(Throwable failure) {
        Throwable root = failure;
        for (int depth = 0; root.getCause() != null && depth < DEEPEST; depth++) {
            root = root.getCause();
        }
        StringBuilder frames = new StringBuilder();
        StackTraceElement[] trace = root.getStackTrace();
        for (int i = 0; i < Math.min(FRAMES, trace.length); i++) {
            frames.append(i == 0 ? "" : " < ").append(trace[i].getClassName()).append('.').append(trace[i].getMethodName())
                    .append(':').append(trace[i].getLineNumber());
        }
        return frames.toString();
    }
}
