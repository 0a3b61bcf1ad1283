package org.longsummer.chain.expectation;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.expectation.Expectation.Influence;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.screening.Screener;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.VisitSketch;
import org.longsummer.evidence.Comparison;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;
import org.longsummer.science.cooling.MotorVoltage;
import org.longsummer.science.cooling.RoofUnit;
import org.longsummer.science.moistair.MoistAir;

/**
 * The propagated uncertainty of measured over expected against a Monte Carlo of the same inputs (JCGM 101:2008), over a grid of
 * conditions. The Monte Carlo has its own way from the inputs to the reading; only the roof unit is shared.
 */
@Tag("slow")
class ExpecterCrossCheckTest {
    private static final String SOURCE = "jcgm-101-2008";
    private static final int DRAWS = 10_000;
    /** Read humidity: what a first order leaves, and the Monte Carlo's own 0.7 %. */
    private static final double READ = 0.06;
    /** Humidity not read: a coil that may be dry or wet is no parabola. */
    private static final double NOT_READ = 0.20;

    private static Expectation expectation(double returnF, double humidity, double outdoorF, double volts, AirDelivery delivery, double feet) {
        Unit plain = VisitSketch.unit("MC");
        Unit unit = new Unit("MC", "MC", "Alder Yard", plain.plate(), delivery, Optional.empty(), Altitude.feet(feet));
        VisitSketch sketch = new VisitSketch().at(LocalDateTime.of(2024, 7, 1, 12, 0)).returnAir(returnF, humidity).ambient(outdoorF).volts(volts);
        return Expecter.expect(Screener.screen(unit, sketch.visit("mc", unit)), new Closings(), UsualVolts.UNKNOWN);
    }

    private interface Case {
        void at(String where, Expectation expectation);
    }

    private static void grid(double[] humidities, Case each) {
        for (AirDelivery delivery : new AirDelivery[] {AirDelivery.DUCTED, AirDelivery.NON_DUCTED}) {
            for (double feet : new double[] {0, 5000}) {
                for (double returnF : new double[] {68, 76, 86}) {
                    for (double humidity : humidities) {
                        for (double outdoorF : new double[] {66, 85, 110}) {
                            double volts = outdoorF == 85 ? VisitSketch.NOT_READ : 108;
                            each.at(returnF + " °F, " + humidity + " %, " + outdoorF + " °F, " + feet + " ft, " + delivery,
                                    expectation(returnF, humidity, outdoorF, volts, delivery, feet));
                        }
                    }
                }
            }
        }
    }

    @Test
    void uncertaintyWithTheHumidityRead() {
        compare("humidity read", new double[] {18, 33, 50, 75}, READ);
    }

    @Test
    void uncertaintyWithoutTheHumidity() {
        compare("humidity not read", new double[] {VisitSketch.NOT_READ}, NOT_READ);
    }

    private void compare(String what, double[] humidities, double allowed) {
        try (Comparison split = Comparison.relative(getClass(), "split, standard uncertainty, " + what, SOURCE, allowed);
                Comparison amps = Comparison.relative(getClass(), "amps, standard uncertainty, " + what, SOURCE, allowed);
                Comparison mean = Comparison.absolute(getClass(), "split, mean over its standard uncertainty, " + what, "", SOURCE, 0.2);
                Comparison correlation = Comparison.absolute(getClass(), "split with amps, correlation, " + what, "", SOURCE, 0.06)) {
            grid(humidities, (where, expectation) -> {
                Draws draws = new Draws(expectation);
                double[] covariance = expectation.covariance();
                split.point(where, Math.sqrt(covariance[0]), draws.deviation(0));
                amps.point(where, Math.sqrt(covariance[2]), draws.deviation(1));
                mean.point(where, draws.mean(0) / draws.deviation(0), 0);
                correlation.point(where, covariance[1] / Math.sqrt(covariance[0] * covariance[2]), draws.correlation());
            });
        }
    }

    /** ln(measured / expected) of split and amps, drawn. */
    private static final class Draws {
        private final Random random = new Random(20_081);
        private final Expectation expectation;
        private final Surroundings now;
        private final double sunInTheCeiling;
        private final double[] sum = new double[2];
        private final double[] square = new double[2];
        private double product;

        Draws(Expectation expectation) {
            this.expectation = expectation;
            this.now = expectation.surroundings();
            this.sunInTheCeiling = now.cavity().kelvins() - (now.returnAir().dryBulb().kelvins() + now.condenserAir().kelvins()) / 2;
            double lnPower = Math.log(expectation.machine().sound().powerRatio());
            double lnVolts = Math.log(MotorVoltage.currentRatio(now.voltageRatio().value()));
            for (int i = 0; i < DRAWS; i++) {
                draw(lnPower, lnVolts);
            }
        }

        private double u(String name) {
            return expectation.influences().stream().filter(i -> i.name().startsWith(name)).mapToDouble(Influence::u).sum();
        }

        private double gauss(double u) {
            return u * random.nextGaussian();
        }

        /** The truth lies about the readings: what the sound unit then shows, read with the probes' errors. */
        private void draw(double lnPower, double lnVolts) {
            double returnError = gauss(now.returnDryBulbU());
            double humidity = Math.min(0.99, now.returnAir().relativeHumidity().fraction() * Math.exp(gauss(now.lnHumidityU())));
            MoistAir air = MoistAir.of(new Temperature(now.returnAir().dryBulb().kelvins() - returnError), new RelativeHumidity(humidity),
                    now.returnAir().pressure());
            double outdoor = now.condenserAir().kelvins() - gauss(now.condenserAirU());
            RoofUnit.Response unit = new RoofUnit(air, new Temperature(outdoor)).sound();
            double ceiling = (air.dryBulb().kelvins() + outdoor) / 2 + sunInTheCeiling;
            double supply = air.dryBulb().kelvins() - unit.split().kelvins();
            double seen = unit.split().kelvins() - (now.ductGain() + gauss(u("duct"))) * (ceiling - supply);
            double split = seen * Math.exp(gauss(u("published curves, split"))) + returnError - gauss(u("supply thermometer"));
            double volts = now.voltageRatio().value() - gauss(now.voltageRatio().standardUncertainty());
            double amps = Math.log(unit.powerRatio()) - lnPower + Math.log(MotorVoltage.currentRatio(volts)) - lnVolts
                    + gauss(u("published curves, amps")) + gauss(u("clamp meter")) + gauss(0.1 * u("motor's current"));
            add(Math.log(split) - expectation.lnSplit(), amps);
        }

        private void add(double split, double amps) {
            double[] both = {split, amps};
            for (int c = 0; c < 2; c++) {
                sum[c] += both[c];
                square[c] += both[c] * both[c];
            }
            product += split * amps;
        }

        double mean(int c) {
            return sum[c] / DRAWS;
        }

        double deviation(int c) {
            return Math.sqrt(square[c] / DRAWS - mean(c) * mean(c));
        }

        double correlation() {
            return (product / DRAWS - mean(0) * mean(1)) / deviation(0) / deviation(1);
        }
    }
}
