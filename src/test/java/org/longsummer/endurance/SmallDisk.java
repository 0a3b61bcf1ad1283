package org.longsummer.endurance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A disk of a few megabytes in memory. Where this user may not mount one, a limit on the size of files stands in for it: the writing
 * fails there too, though with another error of the system and without room to be made.
 */
final class SmallDisk implements AutoCloseable {
    private static final int MEGABYTES = 8;
    private static final int LARGEST_FILE_KILOBYTES = 700;
    private static final int LEFT_FREE = 300_000;

    private final Path place;
    private final boolean mounted;

    SmallDisk(Path directory) {
        try {
            place = Files.createDirectories(directory);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        mounted = run("mount", "-t", "tmpfs", "-o", "size=" + MEGABYTES + "m", "none", place.toString());
    }

    Path place() {
        return place;
    }

    boolean isMounted() {
        return mounted;
    }

    String kind() {
        return mounted ? "a disk of " + MEGABYTES + " MB" : "stand-in, no disk could be mounted: files of at most " + LARGEST_FILE_KILOBYTES
                + " kB";
    }

    /** What a program has to be started by to feel the stand-in. */
    List<String> starter() {
        return mounted ? List.of() : List.of("bash", "-c", "ulimit -f " + LARGEST_FILE_KILOBYTES + "; exec \"$@\"", "bash");
    }

    /** Leaves little room. */
    void fill() {
        if (mounted) {
            try {
                Files.write(place.resolve("filler"), new byte[(int) (Files.getFileStore(place).getUsableSpace() - LEFT_FREE)]);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    void makeRoom() {
        try {
            Files.deleteIfExists(place.resolve("filler"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** From now on nothing can be written on it; false where that cannot be had. */
    boolean makeReadOnly() {
        return mounted && run("mount", "-o", "remount,ro", place.toString());
    }

    private static boolean run(String... command) {
        try {
            return new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        if (mounted) {
            run("umount", "-l", place.toString());
        }
    }
}
