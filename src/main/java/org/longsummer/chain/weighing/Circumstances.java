package org.longsummer.chain.weighing;

import java.time.LocalDate;
import java.util.Optional;
import org.longsummer.chain.outlook.Standing;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Plate;
import org.longsummer.quantity.Power;

/**
 * One unit on one day, as the weighing needs it.
 *
 * @param standing what its history says
 * @param soundDraw what it draws when sound, in the season's weather
 * @param warrantyUntil last day on which the maker gives a new unit for one whose sealed circuit fails
 * @param quote a price in hand that takes the place of the list's
 * @param somebodyOnSite somebody who can do the work is there anyway, so that no call-out is paid
 */
public record Circumstances(Standing standing, Power soundDraw, Optional<LocalDate> warrantyUntil, Optional<Quote> quote,
        boolean somebodyOnSite) {
    /** Nominal cooling over electric power of a roof unit: about 9 Btu/Wh (practice; 13,500 Btu/h at 12.5 A and 115 V gives 9.4). */
    private static final double BTU_PER_WATT_HOUR = 9.2;
    private static final double POWER_FACTOR = 0.95;
    private static final double VOLTS = 115;
    private static final double NOMINAL_BTU_PER_HOUR = 13_500;
    /** A plate's RLA plus fan is a ceiling: running draws about four fifths of it. */
    private static final double OF_CEILING = 0.8;

    /** A unit with nothing but its standing and its draw. */
    public static Circumstances of(Standing standing, Power soundDraw) {
        return new Circumstances(standing, soundDraw, Optional.empty(), Optional.empty(), false);
    }

    /** What a unit of this plate draws when sound; by the commonest size when the plate could not be read. */
    public static Power soundDraw(Plate plate) {
        if (plate.ratedAmps().isPresent() && plate.ratedAmpsKind() != AmpsKind.RLA) {
            double share = plate.ratedAmpsKind() == AmpsKind.INPUT ? 1 : OF_CEILING;
            double volts = plate.ratedVolts().isPresent() ? plate.ratedVolts().get().volts() : VOLTS;
            return new Power(plate.ratedAmps().get().amperes() * share * volts * POWER_FACTOR);
        }
        double nominal = plate.nominal().isPresent() ? plate.nominal().get().btuPerHour() : NOMINAL_BTU_PER_HOUR;
        return new Power(nominal / BTU_PER_WATT_HOUR);
    }

    Circumstances with(Standing other) {
        return new Circumstances(other, soundDraw, warrantyUntil, quote, somebodyOnSite);
    }

    /** The same with somebody on site. */
    public Circumstances withSomebodyOnSite() {
        return new Circumstances(standing, soundDraw, warrantyUntil, quote, true);
    }
}
