package org.longsummer.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** A record's files as one zip file. */
public final class RecordZip {
    /** What a record consists of; anything else in a zip file is left out. */
    private static final Pattern NAMES = Pattern.compile("[a-z_]{1,40}\\.csv|business_logo|photos/[A-Za-z0-9_-]{1,64}");
    private static final long MOST_BYTES = 8_000_000_000L;
    private static final int MOST_FILES = 1_000_000;

    private RecordZip() {}

    /** Writes the files of a directory. */
    public static void pack(Path directory, OutputStream out) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(directory)) {
            files = all.filter(Files::isRegularFile).sorted().toList();
        }
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Path file : files) {
                zip.putNextEntry(new ZipEntry(directory.relativize(file).toString().replace('\\', '/')));
                Files.copy(file, zip);
                zip.closeEntry();
            }
        }
    }

    /**
     * Writes the record's files of a zip file into a directory.
     *
     * @throws FileRefused when it is no zip file, or one far too large
     */
    public static void unpack(InputStream in, Path directory) throws IOException, FileRefused {
        long left = MOST_BYTES;
        int files = 0;
        try (ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (!NAMES.matcher(entry.getName()).matches()) {
                    continue;
                }
                Path place = directory.resolve(entry.getName());
                Files.createDirectories(place.getParent());
                left -= copy(zip, place, left);
                files++;
                if (left <= 0 || files > MOST_FILES) {
                    throw refused("it is too large to be a record");
                }
            }
        } catch (ZipException e) {
            throw refused("it is damaged; export it again");
        }
        if (files == 0) {
            throw refused("it is no zip file with a record's files in it; choose one that was exported here");
        }
    }

    private static long copy(InputStream from, Path to, long most) throws IOException {
        long copied = 0;
        byte[] buffer = new byte[1 << 16];
        try (OutputStream out = Files.newOutputStream(to)) {
            for (int read = from.read(buffer); read >= 0 && copied < most; read = from.read(buffer)) {
                out.write(buffer, 0, read);
                copied += read;
            }
        }
        return copied;
    }

    private static FileRefused refused(String remedy) {
        return new FileRefused(List.of(new Problem("record", 0, "", "", remedy)), 1);
    }
}
