package org.longsummer.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** A directory that is there while it is needed. */
public final class TemporaryDirectory implements AutoCloseable {
    private final Path path;

    public TemporaryDirectory(String prefix) throws IOException {
        path = Files.createTempDirectory(prefix);
    }

    public Path path() {
        return path;
    }

    @Override
    public void close() throws IOException {
        if (!Files.exists(path)) {
            return;
        }
        try (Stream<Path> all = Files.walk(path)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(each);
            }
        }
    }
}
