package org.longsummer.store;

import java.time.Instant;

/**
 * The marking of a visit that no longer counts.
 *
 * @param by who withdrew it
 * @param at when
 * @param reason why
 */
public record Withdrawal(String by, Instant at, String reason) {}
