package org.longsummer.web;

import java.util.List;
import java.util.Optional;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Plate;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.FleetUnit;
import org.longsummer.wire.Shown;

/**
 * A unit as its page shows it; texts are empty when not known.
 *
 * @param id its identifier
 * @param label what people call it
 * @param depot where it stands
 * @param vehicle the vehicle it sits on
 * @param roofPosition where on the roof
 * @param inService looked after now
 * @param ampsCanBeJudged false for a variable-speed unit
 * @param plate terms and what the plate says, in the order of a plate
 */
record UnitView(String id, String label, String depot, String vehicle, String roofPosition, boolean inService, boolean ampsCanBeJudged,
        List<Term> plate) {

    /** A term and its text. */
    record Term(String term, String text) {}

    static UnitView of(FleetUnit unit, UnitSystem system) {
        return new UnitView(unit.id(), unit.unit().label(), unit.unit().site(), unit.vehicle(), unit.roofPosition(),
                unit.duty() == FleetUnit.Duty.IN_SERVICE, !unit.unit().plate().variableSpeed(), plate(unit, system));
    }

    private static List<Term> plate(FleetUnit unit, UnitSystem system) {
        Plate plate = unit.unit().plate();
        return List.of(new Term("Make", unit.make()), new Term("Model", unit.model()), new Term("Serial", unit.serial()),
                new Term("Nominal size", text(plate.nominal().map(Shown::of))),
                new Term("Refrigerant", plate.refrigerant().orElse("")), new Term("Amps on the plate", amps(plate, system)),
                new Term("Rated volts", text(Shown.of(plate.ratedVolts(), system))),
                new Term("Compressor", plate.variableSpeed() ? "variable speed: its amps say nothing, its split does" : ""),
                new Term("Soft starter", plate.softStarter() ? "fitted" : ""),
                new Term("Run capacitor label", text(Shown.of(plate.capacitorLabel(), system))),
                new Term("Air", delivery(unit.unit().delivery())),
                new Term("Installed", unit.unit().installedOn().map(Object::toString).orElse("")),
                new Term("Altitude", Shown.of(unit.unit().altitude(), system).text()), new Term("Owner", unit.owner()),
                new Term("Warranty until", unit.warrantyUntil().map(Object::toString).orElse("")));
    }

    private static String text(Optional<Shown> shown) {
        return shown.map(Shown::text).orElse("");
    }

    private static String amps(Plate plate, UnitSystem system) {
        return plate.ratedAmps().map(amps -> amps.text(system) + ", " + meaning(plate.ratedAmpsKind())).orElse("");
    }

    private static String meaning(AmpsKind kind) {
        return switch (kind) {
            case INPUT -> "running amps at the rating point";
            case RLA -> "rated load amps of the compressor";
            case RLA_PLUS_FAN -> "rated load amps plus fan";
            case UNKNOWN -> "kind not known";
        };
    }

    private static String delivery(AirDelivery delivery) {
        return switch (delivery) {
            case DUCTED -> "through ducts";
            case NON_DUCTED -> "straight down";
            case UNKNOWN -> "";
        };
    }
}
