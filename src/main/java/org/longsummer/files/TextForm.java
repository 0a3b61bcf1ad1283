package org.longsummer.files;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * How the bytes of a file become text: told by its byte-order mark, by its zero bytes, or by being valid UTF-8 from end to end. What is
 * none of these was written by an older program in one of many ways, which only a person can tell apart.
 *
 * @param charset how, as far as it is known
 * @param skipped bytes of a byte-order mark
 * @param sure whether the file itself says so
 */
record TextForm(Charset charset, int skipped, boolean sure) {
    /** Those that Western and Central European, Cyrillic and Greek spreadsheets and older Macs write, the most frequent one first. */
    static final List<String> OTHERS = List.of("windows-1252", "windows-1250", "windows-1251", "windows-1253", "windows-1254", "x-MacRoman");
    private static final int LOOKED_AT = 8192;

    static TextForm of(Path file, Optional<String> answer) throws IOException {
        byte[] start;
        try (InputStream bytes = Files.newInputStream(file)) {
            start = bytes.readNBytes(LOOKED_AT);
        }
        if (begins(start, 0xEF, 0xBB, 0xBF)) {
            return new TextForm(StandardCharsets.UTF_8, 3, true);
        }
        if (begins(start, 0xFF, 0xFE) || begins(start, 0xFE, 0xFF)) {
            return new TextForm(start[0] == (byte) 0xFF ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE, 2, true);
        }
        Optional<Charset> wide = wide(start);
        if (wide.isPresent()) {
            return new TextForm(wide.get(), 0, true);
        }
        if (isUtf8(file)) {
            return new TextForm(StandardCharsets.UTF_8, 0, true);
        }
        Optional<String> known = answer.filter(OTHERS::contains);
        return new TextForm(Charset.forName(known.orElse(OTHERS.get(0))), 0, known.isPresent());
    }

    private static boolean begins(byte[] start, int... marks) {
        for (int i = 0; i < marks.length; i++) {
            if (start.length <= i || (start[i] & 0xFF) != marks[i]) {
                return false;
            }
        }
        return true;
    }

    /** In UTF-16 without a mark, nearly every other byte of a table is zero. */
    private static Optional<Charset> wide(byte[] start) {
        int[] zeros = new int[2];
        for (int i = 0; i < start.length; i++) {
            zeros[i % 2] += start[i] == 0 ? 1 : 0;
        }
        int pairs = start.length / 2;
        boolean many = pairs >= 4 && Math.max(zeros[0], zeros[1]) > pairs / 2 && Math.min(zeros[0], zeros[1]) * 20 < pairs;
        return many ? Optional.of(zeros[1] > zeros[0] ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE) : Optional.empty();
    }

    /** A letter that is cut off by the end of the file is no sign of another form. */
    private static boolean isUtf8(Path file) throws IOException {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer bytes = ByteBuffer.allocate(1 << 16);
        CharBuffer text = CharBuffer.allocate(1 << 16);
        try (InputStream in = Files.newInputStream(file)) {
            for (int read = 0; read >= 0; read = in.read(bytes.array(), bytes.position(), bytes.remaining())) {
                bytes.position(bytes.position() + read).flip();
                CoderResult result = decoder.decode(bytes, text, false);
                if (result.isError()) {
                    return false;
                }
                bytes.compact();
                text.clear();
            }
        }
        return true;
    }

    /** The reader of our files takes UTF-8, and UTF-16 with its mark. */
    boolean isReadAsItIs() {
        return sure && (charset.equals(StandardCharsets.UTF_8) || skipped > 0);
    }

    /** Opens the text; what is no text in this form fails the reading. */
    Reader open(Path file) throws IOException {
        InputStream bytes = new BufferedInputStream(Files.newInputStream(file), 1 << 16);
        try {
            bytes.skipNBytes(skipped);
            CodingErrorAction onError = sure ? CodingErrorAction.REPORT : CodingErrorAction.REPLACE;
            return new InputStreamReader(bytes, charset.newDecoder().onMalformedInput(onError).onUnmappableCharacter(onError));
        } catch (IOException e) {
            bytes.close();
            throw e;
        }
    }
}
