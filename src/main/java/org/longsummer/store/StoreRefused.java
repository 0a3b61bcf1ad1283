package org.longsummer.store;

/** Thrown when a file cannot be opened as a record; it was not changed. */
public final class StoreRefused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    StoreRefused(String message) {
        super(message);
    }

    StoreRefused(String message, Throwable cause) {
        super(message, cause);
    }
}
