package org.longsummer.store;

import java.time.ZoneId;
import java.util.Optional;
import org.longsummer.chain.season.Climate;
import org.longsummer.quantity.Altitude;

/**
 * A place where vehicles stand; {@code site} in CSV files.
 *
 * @param name unique
 * @param altitude height above mean sea level, where known
 * @param timeZone in which its people read clocks, where known
 * @param climate how much its units run over the year, where somebody said so
 */
public record Depot(String name, Optional<Altitude> altitude, Optional<ZoneId> timeZone, Optional<Climate> climate) {}
