package org.longsummer.chain.expectation;

import java.time.LocalDate;
import java.util.Optional;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.learning.SiteMoisture;
import org.longsummer.chain.screening.Field;
import org.longsummer.chain.screening.Screening;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.SupplyAt;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.quantity.Pressure;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;
import org.longsummer.science.moistair.HylandWexler1983;
import org.longsummer.science.moistair.MoistAir;
import org.longsummer.science.moistair.StandardAtmosphere;
import org.longsummer.science.uncertainty.Uncertain;

/**
 * Works out what the unit felt: merges each reading with what the weather, the place and the season say, so that a missing or
 * doubtful reading widens the answer and never stops it.
 *
 * <p>Defaults marked practice are common practice of the trade, no published source.
 */
final class SurroundingsReader {
    /** Outdoor air when nobody read it: a day on which a unit is checked (practice). */
    private static final Temperature USUAL_AMBIENT = Temperature.fahrenheit(86);
    private static final double USUAL_AMBIENT_U = 6.5;
    /** Return air when nobody read it (practice). */
    private static final Temperature USUAL_RETURN = Temperature.fahrenheit(77);
    private static final double USUAL_RETURN_U = 3;
    /** Heat over a roof in full sun, K, and how sure (practice: 5 to 20 °F above the weather report). */
    private static final double ROOF_HEAT = 2.8;
    private static final double ROOF_HEAT_U = 1.3;
    /** Indoor over outdoor humidity ratio, ln, and its spread from place to place (practice). */
    private static final double LN_INDOOR_OVER_OUTDOOR = Math.log(0.85);
    private static final double LN_INDOOR_OVER_OUTDOOR_U = 0.32;
    /** Room humidity when nothing is known (practice). */
    private static final double USUAL_HUMIDITY = 0.48;
    private static final double LN_USUAL_HUMIDITY_U = 0.40;
    private static final double LN_USUAL_VAPOUR_PRESSURE = Math.log(USUAL_HUMIDITY * saturation(USUAL_RETURN));
    private static final double USUAL_VOLTS = 115;
    private static final double GENERATOR_VOLTS = 119;
    private static final double GENERATOR_VOLTS_U = 2.5;

    private final Unit unit;
    private final Visit visit;
    private final Readings readings;
    private final Pressure pressure;
    private final UsualVolts usualVolts;
    private final Optional<Temperature> returnDryBulb;
    private final Optional<Temperature> ambientDryBulb;

    SurroundingsReader(Screening screening, UsualVolts usualVolts) {
        this.usualVolts = usualVolts;
        this.unit = screening.unit();
        this.visit = screening.visit();
        this.readings = screening.usable();
        this.returnDryBulb = trusted(screening, Field.RETURN_DRY_BULB, readings.returnDryBulb());
        this.ambientDryBulb = trusted(screening, Field.AMBIENT_DRY_BULB, readings.ambientDryBulb());
        this.pressure = StandardAtmosphere.pressure(unit.altitude());
    }

    private static Optional<Temperature> trusted(Screening screening, Field field, Optional<Temperature> reading) {
        return screening.isMistaken(field) ? Optional.empty() : reading;
    }

    Surroundings read(Closings closings) {
        double sun = Sun.sineOfHeight(visit);
        Temperature dryBulb = returnDryBulb.orElse(USUAL_RETURN);
        double dryBulbU = returnDryBulb.isPresent() ? visit.instruments().probe().kelvins() : USUAL_RETURN_U;
        Uncertain lnVapour = lnVapourPressure(dryBulb, closings);
        MoistAir returnAir = MoistAir.of(dryBulb, new RelativeHumidity(
                Math.min(0.99, Math.exp(lnVapour.value()) / saturation(dryBulb))), pressure);
        Uncertain condenserAir = condenserAir(sun);
        Temperature cavity = new Temperature((dryBulb.kelvins() + condenserAir.value()) / 2 + (6 + 9 * sun) / 1.8);
        return new Surroundings(returnAir, dryBulbU, lnVapour.standardUncertainty(), readings.returnMoisture().isPresent(),
                new Temperature(condenserAir.value()), condenserAir.standardUncertainty(), voltageRatio(), sun, ductGain(), cavity);
    }

    private static double saturation(Temperature t) {
        return HylandWexler1983.saturationPressure(t).pascals();
    }

    private Uncertain lnVapourPressure(Temperature dryBulb, Closings closings) {
        Weighted witnesses = new Weighted();
        readings.returnMoisture().ifPresent(moisture -> addReading(witnesses, dryBulb, moisture));
        ambientDryBulb.ifPresent(ambient -> readings.ambientHumidity().ifPresent(humidity -> {
            double rh = Math.max(0.05, Math.min(1, humidity.fraction()));
            double u = visit.instruments().humidity().fraction() / rh;
            witnesses.add(Math.log(rh * saturation(ambient)) + LN_INDOOR_OVER_OUTDOOR,
                    Math.sqrt(LN_INDOOR_OVER_OUTDOOR_U * LN_INDOOR_OVER_OUTDOOR_U + u * u));
        }));
        LocalDate day = visit.utcDay();
        closings.before(day, SiteMoisture.key(unit.site(), visit.localDay().getMonthValue())).map(SiteMoisture::of)
                .ifPresent(known -> witnesses.add(known.value(), known.standardUncertainty()));
        witnesses.add(LN_USUAL_VAPOUR_PRESSURE, LN_USUAL_HUMIDITY_U);
        return witnesses.mean();
    }

    private void addReading(Weighted witnesses, Temperature dryBulb, Moisture moisture) {
        double probe = visit.instruments().probe().kelvins();
        if (moisture instanceof Moisture.Relative relative) {
            double rh = Math.max(0.04, Math.min(1, relative.humidity().fraction()));
            witnesses.add(Math.log(rh * saturation(dryBulb)), visit.instruments().humidity().fraction() / rh);
        } else if (moisture instanceof Moisture.WetBulb wet && wet.temperature().compareTo(dryBulb) <= 0) {
            MoistAir air = MoistAir.ofWetBulb(dryBulb, wet.temperature(), pressure);
            double humid = air.relativeHumidity().fraction() * saturation(dryBulb);
            MoistAir more = MoistAir.ofWetBulb(dryBulb, new Temperature(wet.temperature().kelvins() + probe), pressure);
            double moreHumid = more.relativeHumidity().fraction() * saturation(dryBulb);
            witnesses.add(Math.log(humid), Math.max(0.03, Math.log(moreHumid / humid)));
        } else if (moisture instanceof Moisture.DewPoint dew && dew.temperature().compareTo(dryBulb) <= 0) {
            witnesses.add(Math.log(saturation(dew.temperature())), 0.065 * probe + 0.02);
        }
    }

    /** Read at the inlet as it is; on the ground with the roof's heat added; unknown in between. An entering-air reading is merged. */
    private Uncertain condenserAir(double sun) {
        Weighted witnesses = new Weighted();
        double heat = ROOF_HEAT * sun;
        double probe = visit.instruments().ambientProbe().kelvins();
        double ambient = ambientDryBulb.orElse(USUAL_AMBIENT).kelvins();
        boolean read = ambientDryBulb.isPresent();
        AmbientAt at = read ? visit.readings().ambientAt() : AmbientAt.UNKNOWN;
        double shift = at == AmbientAt.INLET ? 0 : at == AmbientAt.GROUND ? heat : 0.5 * heat;
        double placeU = at == AmbientAt.INLET ? 0.3 : at == AmbientAt.GROUND ? ROOF_HEAT_U : Math.max(0.5, 0.6 * heat);
        witnesses.add(ambient + shift, read ? Math.sqrt(probe * probe + placeU * placeU) : USUAL_AMBIENT_U);
        readings.condenserEntering().ifPresent(entering -> witnesses.add(entering.kelvins(), Math.sqrt(probe * probe + 0.09)));
        return witnesses.mean();
    }

    private Uncertain voltageRatio() {
        double rated = unit.plate().ratedVolts().map(v -> v.volts()).orElse(USUAL_VOLTS);
        double scale = rated / USUAL_VOLTS;
        double volts;
        double u;
        if (readings.volts().isPresent()) {
            volts = readings.volts().get().volts();
            u = visit.instruments().voltage().volts() * scale;
        } else if (visit.powerSource() == PowerSource.GENERATOR) {
            volts = GENERATOR_VOLTS * scale;
            u = GENERATOR_VOLTS_U * scale;
        } else {
            Uncertain usual = usualVolts.next(scale);
            volts = usual.value();
            u = usual.standardUncertainty();
        }
        return new Uncertain(volts / rated, u / rated);
    }

    private double ductGain() {
        SupplyAt at = readings.supplyAt();
        if (at == SupplyAt.DISCHARGE) {
            return 0.01;
        }
        double near = unit.delivery() == AirDelivery.DUCTED ? 0.085 : unit.delivery() == AirDelivery.NON_DUCTED ? 0.03 : 0.05;
        return at == SupplyAt.FAR_REGISTER ? near + 0.07 : near;
    }
}
