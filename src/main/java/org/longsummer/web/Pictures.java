package org.longsummer.web;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import org.longsummer.wire.Problem;

/** Pictures as they come in: what they are is told by their bytes, whatever they are called. */
final class Pictures {
    private static final List<String> KINDS = List.of("image/jpeg", "image/png", "image/webp");

    private Pictures() {}

    /** The content type that the bytes of a JPEG, PNG or WebP file show; empty for everything else. */
    static Optional<String> contentType(byte[] bytes) {
        if (starts(bytes, 0, 0xFF, 0xD8, 0xFF)) {
            return Optional.of(KINDS.get(0));
        }
        if (starts(bytes, 0, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)) {
            return Optional.of(KINDS.get(1));
        }
        return starts(bytes, 0, 'R', 'I', 'F', 'F') && starts(bytes, 8, 'W', 'E', 'B', 'P') ? Optional.of(KINDS.get(2)) : Optional.empty();
    }

    /**
     * Reads a picture of at most so many bytes.
     *
     * @param field named when it is refused
     */
    static byte[] read(InputStream body, int most, String field) throws IOException {
        byte[] bytes = body.readNBytes(most + 1);
        if (bytes.length > most) {
            throw new Refused(422, List.of(new Problem(field, "more than " + most / 1000 + " kB", "At most " + most / 1000
                    + " kB can be taken.", "Make the picture smaller; the pages do that by themselves.")));
        }
        if (contentType(bytes).isEmpty()) {
            throw new Refused(422, List.of(new Problem(field, "", "A picture as JPEG, PNG or WebP belongs here.", "Save it as one of them.")));
        }
        return bytes;
    }

    private static boolean starts(byte[] bytes, int from, int... expected) {
        if (bytes.length < from + expected.length) {
            return false;
        }
        for (int i = 0; i < expected.length; i++) {
            if ((bytes[from + i] & 0xFF) != expected[i]) {
                return false;
            }
        }
        return true;
    }
}
