package org.longsummer.wire;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Writes JSON where no library can be had. Members that are absent are left out. */
public final class JsonWriter {
    private static final char[] HEXADECIMAL = "0123456789abcdef".toCharArray();

    private final StringBuilder text = new StringBuilder();
    private boolean separate;

    /** What was written so far. */
    @Override
    public String toString() {
        return text.toString();
    }

    /** One object whose members are written inside. */
    public JsonWriter object(Runnable members) {
        open('{');
        members.run();
        return close('}');
    }

    public JsonWriter object(String name, Runnable members) {
        return name(name).object(members);
    }

    /** One array. */
    public <T> JsonWriter array(Iterable<T> items, Consumer<T> write) {
        open('[');
        for (T item : items) {
            write.accept(item);
        }
        return close(']');
    }

    public <T> JsonWriter array(String name, Iterable<T> items, Consumer<T> write) {
        return name(name).array(items, write);
    }

    public JsonWriter texts(String name, List<String> items) {
        return array(name, items, this::value);
    }

    public JsonWriter field(String name, String value) {
        return name(name).value(value);
    }

    public JsonWriter field(String name, double value) {
        return name(name).value(value);
    }

    public JsonWriter field(String name, int value) {
        return name(name).raw(Integer.toString(value));
    }

    public JsonWriter field(String name, boolean value) {
        return name(name).raw(value ? "true" : "false");
    }

    /** A text, a number or a truth, when it is there. */
    public JsonWriter field(String name, Optional<?> value) {
        value.ifPresent(present -> {
            name(name);
            if (present instanceof Double number) {
                value(number.doubleValue());
            } else {
                value(present.toString());
            }
        });
        return this;
    }

    /** What follows is the value of this member. */
    public JsonWriter name(String name) {
        value(name);
        text.append(':');
        separate = false;
        return this;
    }

    /** JSON that was written before. */
    public JsonWriter raw(String json) {
        comma();
        text.append(json);
        return this;
    }

    /** @throws IllegalArgumentException for a number that JSON has no form for */
    public JsonWriter value(double number) {
        if (!(Math.abs(number) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("JSON has no form for " + number);
        }
        return raw(Double.toString(number));
    }

    public JsonWriter value(String value) {
        comma();
        text.append('"');
        for (int i = 0; i < value.length(); i++) {
            append(value.charAt(i));
        }
        text.append('"');
        return this;
    }

    private void append(char c) {
        if (c == '"' || c == '\\') {
            text.append('\\').append(c);
        } else if (c < ' ') {
            text.append("\\u00").append(HEXADECIMAL[c >> 4]).append(HEXADECIMAL[c & 15]);
        } else {
            text.append(c);
        }
    }

    private void open(char bracket) {
        comma();
        text.append(bracket);
        separate = false;
    }

    private JsonWriter close(char bracket) {
        text.append(bracket);
        separate = true;
        return this;
    }

    private void comma() {
        if (separate) {
            text.append(',');
        }
        separate = true;
    }
}
