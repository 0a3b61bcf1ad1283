package org.longsummer.demo;

import java.time.OffsetDateTime;
import java.util.Map;

/**
 * A row of a {@code visits.csv}.
 *
 * @param at its moment
 * @param cells text by column; absent columns are empty
 */
record InventedVisit(OffsetDateTime at, Map<String, String> cells) {}
