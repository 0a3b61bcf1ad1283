package org.longsummer.wire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads JSON (RFC 8259) where no library can be had: objects become maps in their own order, arrays lists, numbers doubles.
 *
 * <p>Meant for what this program wrote itself; what is malformed is refused with the place.
 */
public final class Json {
    private static final int DEEPEST = 64;

    private final String text;
    private int at;
    private int depth;

    private Json(String text) {
        this.text = text;
    }

    /**
     * The whole text as one value.
     *
     * @throws IllegalArgumentException when it is not JSON
     */
    public static Object read(String text) {
        Json json = new Json(text);
        Object value = json.value();
        json.space();
        if (json.at < text.length()) {
            throw json.malformed("the end");
        }
        return value;
    }

    /** The whole text as one object. */
    public static Fields object(String text) {
        return Fields.of(read(text));
    }

    private Object value() {
        space();
        return switch (peek()) {
            case '{' -> object();
            case '[' -> array();
            case '"' -> string();
            case 't' -> word("true", Boolean.TRUE);
            case 'f' -> word("false", Boolean.FALSE);
            case 'n' -> word("null", null);
            default -> number();
        };
    }

    private Map<String, Object> object() {
        Map<String, Object> members = new LinkedHashMap<>();
        enter();
        if (!closes('}')) {
            do {
                space();
                String name = string();
                space();
                expect(':');
                members.put(name, value());
                space();
            } while (goesOn('}'));
        }
        depth--;
        return members;
    }

    private List<Object> array() {
        List<Object> items = new ArrayList<>();
        enter();
        if (!closes(']')) {
            do {
                items.add(value());
                space();
            } while (goesOn(']'));
        }
        depth--;
        return items;
    }

    private void enter() {
        at++;
        if (++depth > DEEPEST) {
            throw malformed("fewer than " + DEEPEST + " levels");
        }
    }

    private boolean closes(char end) {
        space();
        boolean closed = peek() == end;
        at += closed ? 1 : 0;
        return closed;
    }

    private boolean goesOn(char end) {
        char next = peek();
        if (next != ',' && next != end) {
            throw malformed("a comma or " + end);
        }
        at++;
        return next == ',';
    }

    private String string() {
        expect('"');
        StringBuilder read = new StringBuilder();
        while (peek() != '"') {
            char next = text.charAt(at++);
            read.append(next == '\\' ? escaped() : next);
        }
        at++;
        return read.toString();
    }

    private char escaped() {
        char kind = peek();
        at++;
        return switch (kind) {
            case 'n' -> '\n';
            case 't' -> '\t';
            case 'r' -> '\r';
            case 'b' -> '\b';
            case 'f' -> '\f';
            case 'u' -> hexadecimal();
            case '"', '\\', '/' -> kind;
            default -> throw malformed("an escape");
        };
    }

    private char hexadecimal() {
        if (at + 4 > text.length()) {
            throw malformed("four hexadecimal digits");
        }
        at += 4;
        return (char) Integer.parseInt(text.substring(at - 4, at), 16);
    }

    private Object word(String word, Object meaning) {
        if (!text.startsWith(word, at)) {
            throw malformed(word);
        }
        at += word.length();
        return meaning;
    }

    private Double number() {
        int from = at;
        while (at < text.length() && "+-0123456789.eE".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        if (from == at) {
            throw malformed("a value");
        }
        return Double.valueOf(text.substring(from, at));
    }

    private void expect(char wanted) {
        if (peek() != wanted) {
            throw malformed(String.valueOf(wanted));
        }
        at++;
    }

    private char peek() {
        if (at >= text.length()) {
            throw malformed("more");
        }
        return text.charAt(at);
    }

    private void space() {
        while (at < text.length() && " \n\r\t".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private IllegalArgumentException malformed(String wanted) {
        return new IllegalArgumentException("JSON: " + wanted + " was expected at character " + at);
    }
}
