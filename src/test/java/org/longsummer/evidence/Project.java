package org.longsummer.evidence;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The project's own files, as a test finds them: the build runs its tests in the project's folder. */
public final class Project {
    public static final Path REFERENCE = Path.of("reference");
    public static final Path TABLES = REFERENCE.resolve("tables");
    public static final Path EVIDENCE = Path.of("target", "evidence");
    public static final Path MAIN_SOURCES = Path.of("src", "main", "java");
    public static final Path TEST_SOURCES = Path.of("src", "test", "java");

    private Project() {}

    public static String read(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static void write(Path path, String text) {
        try {
            Files.createDirectories(path.toAbsolutePath().getParent());
            Files.writeString(path, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Files under a folder whose name passes, in order of their paths; none when the folder is not there. */
    public static List<Path> files(Path folder, Predicate<String> name) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(Files::isRegularFile).filter(path -> name.test(path.getFileName().toString())).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
