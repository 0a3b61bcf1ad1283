package org.longsummer.store;

/**
 * Why a visit takes the place of another.
 *
 * @param correctsId the visit it takes the place of
 * @param reason why
 */
public record Correction(String correctsId, String reason) {}
