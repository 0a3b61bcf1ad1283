package org.longsummer.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Looks at what a file holds, whatever it is called: a table is text. */
final class TextCheck {
    private static final int LOOKED_AT = 8192;

    private static final String WORKBOOK = "this is a spreadsheet program's own file and not a table as text; open it there and save it as \"CSV UTF-8\"";

    private TextCheck() {}

    /** What to do when it holds something else than text; empty when it may be a table. */
    static Optional<String> remedy(Path file) throws IOException {
        byte[] start;
        try (InputStream bytes = Files.newInputStream(file)) {
            start = bytes.readNBytes(LOOKED_AT);
        }
        if (isWorkbook(start)) {
            return Optional.of(WORKBOOK);
        }
        boolean wide = begins(start, 0xFF, 0xFE) || begins(start, 0xFE, 0xFF);
        for (byte one : start) {
            if (one == 0 && !wide) {
                return Optional.of("this is not text, whatever the file is called; choose a file that was saved as CSV");
            }
        }
        return Optional.empty();
    }

    /** The same of a file whose text may be written in any form. */
    static Optional<String> foreign(Path file) throws IOException {
        byte[] start;
        try (InputStream bytes = Files.newInputStream(file)) {
            start = bytes.readNBytes(LOOKED_AT);
        }
        return isWorkbook(start) ? Optional.of(WORKBOOK) : TextForm.of(file, Optional.empty()).charset().name().startsWith("UTF-16")
                ? Optional.empty() : remedy(file);
    }

    private static boolean isWorkbook(byte[] start) {
        return begins(start, 'P', 'K', 3, 4) || begins(start, 0xD0, 0xCF, 0x11, 0xE0);
    }

    private static boolean begins(byte[] start, int... marks) {
        if (start.length < marks.length) {
            return false;
        }
        for (int i = 0; i < marks.length; i++) {
            if ((start[i] & 0xFF) != marks[i]) {
                return false;
            }
        }
        return true;
    }
}
