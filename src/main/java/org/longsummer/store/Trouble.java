package org.longsummer.store;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.ReadOnlyFileSystemException;
import java.sql.SQLTransientConnectionException;
import java.util.Locale;
import java.util.Optional;
import org.sqlite.SQLiteException;

/**
 * What keeps the record from being read or written whatever is asked of it: the disk, its rights, another program. Nothing was changed
 * when one of these is met, since a transaction is on disk whole or not at all.
 */
public enum Trouble {
    DISK_FULL("The disk is full; nothing was changed.",
            "Make room on the disk of the data directory and of the directory for temporary files; then try again."),
    DISK_FAILED("The disk did not take or give what was asked; nothing was changed.",
            "See whether the disk is whole, full or over its quota; then try again. Keep the last backup safe."),
    READ_ONLY("The record's directory or file cannot be written; nothing was changed.",
            "Give the user that runs Longsummer the right to write in the data directory, or name another one."),
    LOCKED("Another program holds the record; nothing was changed.",
            "Try again in a minute; if it stays, end the other program."),
    DAMAGED("The record's file is damaged.", "Stop Longsummer, keep the file, and restore the last backup into an empty directory.");

    private static final int PRIMARY_CODE = 0xff;
    private static final int DEEPEST = 20;

    private final String limit;
    private final String remedy;

    Trouble(String limit, String remedy) {
        this.limit = limit;
        this.remedy = remedy;
    }

    /** What is the matter, as a sentence. */
    public String limit() {
        return limit;
    }

    /** What to do, as a sentence. */
    public String remedy() {
        return remedy;
    }

    /** The word for logs: {@code disk_full} and the like. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The trouble behind a failure, where it is one of these. */
    public static Optional<Trouble> in(Throwable failure) {
        Throwable cause = failure;
        for (int depth = 0; cause != null && depth < DEEPEST; depth++) {
            Optional<Trouble> trouble = of(cause);
            if (trouble.isPresent()) {
                return trouble;
            }
            cause = cause.getCause();
        }
        return Optional.empty();
    }

    private static Optional<Trouble> of(Throwable cause) {
        if (cause instanceof SQLiteException sqlite) {
            return ofCode(sqlite.getResultCode().code & PRIMARY_CODE);
        }
        if (cause instanceof SQLTransientConnectionException) {
            return Optional.of(LOCKED);
        }
        if (cause instanceof AccessDeniedException || cause instanceof ReadOnlyFileSystemException) {
            return Optional.of(READ_ONLY);
        }
        if (cause instanceof FileSystemException file && file.getReason() != null) {
            return ofReason(file.getReason());
        }
        return cause instanceof java.io.IOException && cause.getMessage() != null ? ofReason(cause.getMessage()) : Optional.empty();
    }

    private static Optional<Trouble> ofReason(String reason) {
        if (reason.contains("No space left") || reason.contains("not enough space") || reason.contains("quota exceeded")) {
            return Optional.of(DISK_FULL);
        }
        return reason.contains("Read-only file system") ? Optional.of(READ_ONLY) : Optional.empty();
    }

    /** SQLite's result codes: https://www.sqlite.org/rescode.html. */
    private static Optional<Trouble> ofCode(int code) {
        return switch (code) {
            case 13 -> Optional.of(DISK_FULL);
            case 10 -> Optional.of(DISK_FAILED);
            case 3, 8, 14 -> Optional.of(READ_ONLY);
            case 5, 6 -> Optional.of(LOCKED);
            case 11, 26 -> Optional.of(DAMAGED);
            default -> Optional.empty();
        };
    }
}
