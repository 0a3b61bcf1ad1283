package org.longsummer.demo;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.Unit;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.Voltage;
import org.longsummer.store.FleetUnit;

/** Draws invented machines with their plates. */
final class Inventory {
    private static final int[] SIZES = {11_000, 13_500, 15_000};
    private static final double[] USUAL_AMPS = {10.3, 12.2, 13.6};
    private static final String[] MAKES = {"Nimbell", "Quarrow", "Tessery"};
    private static final String SERIAL_LETTERS = "ABCDEFGHJKLMNPQRTUVWXYZ";
    private static final double RLA_PLUS_FAN = 1.25;

    private Inventory() {}

    /**
     * Draws one.
     *
     * @param id its id
     * @param label what people call it
     * @param vehicle what it sits on
     * @param roofPosition where on the roof
     * @param owner whose it is
     */
    static Machine draw(String id, String label, String vehicle, String roofPosition, String owner, Place place, Random chance) {
        int size = chance.nextInt(SIZES.length);
        int year = 2008 + chance.nextInt(15);
        Unit unit = new Unit(id, label, place.name(), plate(size, year, chance),
                chance.nextInt(3) > 0 ? AirDelivery.DUCTED : AirDelivery.NON_DUCTED,
                Optional.of(LocalDate.of(year, 1 + chance.nextInt(12), 1 + chance.nextInt(28))), place.altitude());
        String make = MAKES[chance.nextInt(MAKES.length)];
        FleetUnit fleetUnit = new FleetUnit(unit, make, make.substring(0, 2).toUpperCase(Locale.ROOT) + "-" + SIZES[size] / 100,
                serial(chance), vehicle, roofPosition, owner, Optional.empty(), FleetUnit.Duty.IN_SERVICE);
        return Machine.drawn(fleetUnit, USUAL_AMPS[size], chance);
    }

    /** Makers print different amps on their plates. */
    private static Plate plate(int size, int year, Random chance) {
        AmpsKind kind = AmpsKind.values()[chance.nextInt(AmpsKind.values().length)];
        double printed = USUAL_AMPS[size] * (1 + 0.03 * chance.nextGaussian());
        printed = switch (kind) {
            case RLA_PLUS_FAN -> printed * RLA_PLUS_FAN;
            case RLA -> printed - 0.4;
            default -> printed;
        };
        String refrigerant = year < 2010 ? "R-22" : year < 2021 ? "R-410A" : "R-32";
        return new Plate(Optional.of(CoolingCapacity.btuPerHour(SIZES[size])), Optional.of(refrigerant),
                Optional.of(new Current(Double.parseDouble(Decimal.text(printed, 1)))), kind, Optional.of(new Voltage(115)), false,
                chance.nextInt(4) == 0, chance.nextBoolean() ? Optional.of(new Capacitance(45)) : Optional.empty());
    }

    private static String serial(Random chance) {
        StringBuilder serial = new StringBuilder();
        for (int i = 0; i < 9; i++) {
            serial.append(i < 2 ? SERIAL_LETTERS.charAt(chance.nextInt(SERIAL_LETTERS.length())) : (char) ('0' + chance.nextInt(10)));
        }
        return serial.toString();
    }
}
