package org.longsummer.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * A copy of a record in one file, made while people work: it holds the last state that was written whole when it began. It gets its
 * name when it was read back and found whole and is on disk; until then it is called {@code .part}.
 */
public final class Backup {
    private static final String UNFINISHED = ".part";

    private Backup() {}

    /**
     * Copies the record of a directory.
     *
     * @param out the copy; it must not be there, a backup replaces nothing
     * @throws StoreRefused when there is no record, or a file of that name
     * @throws IOException when the copy cannot be written
     */
    public static void take(Path dataDirectory, Path out) throws IOException {
        Path record = dataDirectory.resolve(Store.FILE);
        if (!Files.exists(record)) {
            throw new StoreRefused(dataDirectory + " holds no record; check the path.");
        }
        copy(record, out);
    }

    static void copy(Path record, Path out) throws IOException {
        if (Files.exists(out)) {
            throw new StoreRefused(out + " is there already, and a backup replaces nothing; name another file.");
        }
        Path unfinished = out.resolveSibling(out.getFileName() + UNFINISHED);
        if (out.toAbsolutePath().getParent() != null) {
            Files.createDirectories(out.toAbsolutePath().getParent());
        }
        try {
            Files.deleteIfExists(unfinished);
            try (RawFile file = new RawFile(record)) {
                file.copyInto(unfinished);
            }
            refuseDamaged(unfinished);
            toDisk(unfinished);
            Files.move(unfinished, out, StandardCopyOption.ATOMIC_MOVE);
            directoryToDisk(out.toAbsolutePath().getParent());
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }

    /**
     * Puts a copy in place as a record. Whatever its version, nothing is changed about it; opening it brings it up to date.
     *
     * @param in a file that {@link #take} made
     * @param dataDirectory empty, or not there
     * @throws StoreRefused when the directory is not empty, or the file is not the whole copy of a record that this version can open
     * @throws IOException when it cannot be read or written
     */
    public static void restore(Path in, Path dataDirectory) throws IOException {
        refuseUnfit(in, dataDirectory);
        Files.createDirectories(dataDirectory);
        Path unfinished = dataDirectory.resolve(Store.FILE + UNFINISHED);
        try {
            Files.copy(in, unfinished);
            refuseDamaged(unfinished);
            Schema.refuseNewer(unfinished, in);
            toDisk(unfinished);
            Files.move(unfinished, dataDirectory.resolve(Store.FILE), StandardCopyOption.ATOMIC_MOVE);
            directoryToDisk(dataDirectory);
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }

    private static void refuseUnfit(Path in, Path dataDirectory) throws IOException {
        if (!Files.isRegularFile(in)) {
            throw new StoreRefused(in + ": there is no such file; check the path.");
        }
        RawFile.refuseForeign(in);
        Path beside = in.resolveSibling(in.getFileName() + "-wal");
        if (Files.exists(beside) && Files.size(beside) > 0) {
            throw new StoreRefused(in + " is a record in use, not a copy: part of it is in " + beside.getFileName()
                    + ". Copy it with the command backup.");
        }
        if (Files.exists(dataDirectory)) {
            try (var entries = Files.list(dataDirectory)) {
                if (entries.findAny().isPresent()) {
                    throw new StoreRefused(dataDirectory + " is not empty, and nothing in it is replaced; name an empty directory.");
                }
            }
        }
    }

    private static void refuseDamaged(Path copy) {
        try (RawFile file = new RawFile(copy)) {
            String fault = file.integrity();
            if (!fault.isEmpty()) {
                throw new StoreRefused("The copy is damaged and was not kept: " + fault);
            }
        }
    }

    private static void toDisk(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** So that the name is on disk too; not every system can do this for a directory. */
    private static void directoryToDisk(Path directory) {
        try (FileChannel channel = FileChannel.open(directory, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // such a system writes names by itself
        }
    }
}
