package org.longsummer.chain.visit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Set;

/**
 * One set of readings taken on one unit at one time, what was seen, and the work done after the readings.
 *
 * @param id unique identifier
 * @param unitId the unit
 * @param at the moment
 * @param offset the place's offset from UTC at that moment
 * @param technician who read; empty when not noted
 * @param instruments standard uncertainties of the meters used
 * @param readings what the instruments said
 * @param fanSpeed blower speed during the readings
 * @param powerSource shore power or generator
 * @param filter the filter as found
 * @param coil the coils as found, the dirtier of the two
 * @param icedCoil frost or ice was seen on the evaporator
 * @param workDone work done after the readings
 * @param notes free text
 */
public record Visit(String id, String unitId, Instant at, ZoneOffset offset, String technician, Instruments instruments,
        Readings readings, FanSpeed fanSpeed, PowerSource powerSource, FilterLook filter, CoilLook coil, boolean icedCoil,
        Set<Work> workDone, String notes) {

    private static final long SECONDS_OF_A_DAY = 86_400;

    /** The UTC day, at whose end what is learned across units closes. */
    public LocalDate utcDay() {
        return day(0);
    }

    /** The calendar day at the place. */
    public LocalDate localDay() {
        return day(offset.getTotalSeconds());
    }

    private LocalDate day(int secondsAheadOfUtc) {
        return LocalDate.ofEpochDay(Math.floorDiv(at.getEpochSecond() + secondsAheadOfUtc, SECONDS_OF_A_DAY));
    }

    /** The same visit, recorded on another unit. */
    public Visit on(String otherUnitId, String newId) {
        return new Visit(newId, otherUnitId, at, offset, technician, instruments, readings, fanSpeed, powerSource, filter, coil, icedCoil,
                workDone, notes);
    }

    /** Everything alike but the identifier: the same visit saved twice. */
    public boolean isTwinOf(Visit other) {
        return equals(new Visit(id, other.unitId, other.at, other.offset, other.technician, other.instruments, other.readings,
                other.fanSpeed, other.powerSource, other.filter, other.coil, other.icedCoil, other.workDone, other.notes));
    }
}
