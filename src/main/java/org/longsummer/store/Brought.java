package org.longsummer.store;

import java.util.List;
import java.util.Map;

/**
 * A fleet's files, read and found sound.
 *
 * @param depots that are new or said otherwise
 * @param units likewise, by their ids
 * @param visits added with all that is to be stored of them; ids differ
 */
public record Brought(List<Depot> depots, Map<String, FleetUnit> units, PackedVisits visits) {}
