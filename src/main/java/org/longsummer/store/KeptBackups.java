package org.longsummer.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A directory of copies of one record, named by when they were made; the newest are kept. Other files in it are left alone. */
public final class KeptBackups {
    private static final Pattern NAME = Pattern.compile("longsummer-(\\d{8}T\\d{6}Z)\\.sqlite");
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final Path directory;
    private final int keep;

    /**
     * @param directory made when it is not there
     * @param keep so many copies stay, from 1 on
     */
    public KeptBackups(Path directory, int keep) {
        this.directory = directory;
        this.keep = keep;
    }

    /**
     * Copies a record and removes the oldest copies beyond those to be kept.
     *
     * @return the copy
     * @throws IOException when it cannot be written; then none was removed
     */
    public Path take(Path dataDirectory, Instant now) throws IOException {
        Path copy = directory.resolve("longsummer-" + MOMENT.format(now) + ".sqlite");
        Backup.take(dataDirectory, copy);
        List<Path> older = copies().stream().filter(path -> !path.equals(copy)).toList();
        for (Path oldest : older.subList(0, Math.max(0, older.size() - (keep - 1)))) {
            Files.deleteIfExists(oldest);
        }
        return copy;
    }

    /** When the newest copy was made. */
    public Optional<Instant> newest() throws IOException {
        List<Path> copies = copies();
        return copies.isEmpty() ? Optional.empty() : moment(copies.get(copies.size() - 1));
    }

    /** All copies, oldest first. */
    public List<Path> copies() throws IOException {
        if (!Files.isDirectory(directory)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(directory)) {
            return files.filter(file -> moment(file).isPresent()).sorted(Comparator.comparing(file -> file.getFileName().toString())).toList();
        }
    }

    private static Optional<Instant> moment(Path file) {
        Matcher name = NAME.matcher(file.getFileName().toString());
        try {
            return name.matches() ? Optional.of(MOMENT.parse(name.group(1), Instant::from)) : Optional.empty();
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
