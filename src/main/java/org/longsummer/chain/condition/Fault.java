package org.longsummer.chain.condition;

import java.util.Optional;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Temperature;
import org.longsummer.science.cooling.Alteration;
import org.longsummer.science.cooling.CheungBraun2015;
import org.longsummer.science.cooling.DomanskiEtAl2014;
import org.longsummer.science.cooling.RoofUnit;

/**
 * A fault that grows: what severity s (0 sound, 1 in need of repair) changes about the unit, how often it begins, and the work that cures
 * it. Filter and evaporator coil are one condition to a thermometer and two jobs.
 *
 * <p>Hazards per season of running and magnitudes without a published source are practice or judgement, said so beside each.
 */
public enum Fault {
    CONDENSER_COIL(Condition.CONDENSER_FOULING, Work.CONDENSER_COIL, 0.08) {
        /** A dirty condenser is a hotter day; 17 °F at s = 1 gives the published power of a coil that has lost four tenths of its air. */
        @Override
        Alteration alteration(double s, RoofUnit machine, Temperature condenserAir) {
            return new Alteration(17 / 1.8 * s, 1, 1 - 0.025 * s, 1);
        }

        @Override
        double condenserFlow(double s) {
            return 1 - 0.4 * Math.min(s, 1.5);
        }
    },
    EVAPORATOR_COIL(Condition.EVAPORATOR_FOULING, Work.EVAPORATOR_COIL, 0.05) {
        @Override
        Alteration alteration(double s, RoofUnit machine, Temperature condenserAir) {
            return evaporatorFlow(s);
        }
    },
    FILTER(Condition.EVAPORATOR_FOULING, Work.FILTER, 0.05) {
        @Override
        Alteration alteration(double s, RoofUnit machine, Temperature condenserAir) {
            return evaporatorFlow(s);
        }
    },
    /** s = 1: three tenths of the charge are missing; mean of two published fits, continued along their last slope. */
    REFRIGERANT(Condition.REFRIGERANT_LOSS, Work.SEALED_SYSTEM, 0.04) {
        @Override
        Alteration alteration(double s, RoofUnit machine, Temperature condenserAir) {
            double f = Math.min(0.3 * s, 0.3);
            Temperature indoor = Temperature.fahrenheit(78);
            double capacity = (CheungBraun2015.UNDERCHARGE.capacityRatio(f, machine.wetBulb(), condenserAir)
                    + DomanskiEtAl2014.capacityRatio(f, indoor, condenserAir)) / 2;
            double power = (CheungBraun2015.UNDERCHARGE.powerRatio(f, machine.wetBulb(), condenserAir)
                    + DomanskiEtAl2014.powerRatio(f, indoor, condenserAir)) / 2;
            double beyond = Math.max(1, s);
            return new Alteration(0, 1, Math.pow(capacity, beyond), Math.pow(power, beyond));
        }
    },
    /** Leaking valves or worn scrolls: practice, 16 % of the capacity and 5 % of the amps at s = 1. */
    COMPRESSOR(Condition.COMPRESSOR_WEAR, Work.SEALED_SYSTEM, 0.045) {
        @Override
        Alteration alteration(double s, RoofUnit machine, Temperature condenserAir) {
            return new Alteration(0, 1, Math.exp(-0.17 * s), Math.exp(-0.055 * s));
        }
    },
    /** Practice: 16 % more amps at s = 1, when four tenths of the microfarads are gone. */
    CAPACITOR(Condition.CAPACITOR_WEAK, Work.CAPACITOR, 0.035) {
        @Override
        Alteration alteration(double s, RoofUnit machine, Temperature condenserAir) {
            return new Alteration(0, 1, Math.exp(-0.03 * s), Math.exp(0.16 * s));
        }
    },
    /** A quarter of the supply air returns at s = 1; the probe in the filter stands partly in the mixture (practice). */
    DIVIDER(Condition.AIR_RECIRCULATION, Work.DIVIDER, 0.02) {
        @Override
        Alteration alteration(double s, RoofUnit machine, Temperature condenserAir) {
            return Alteration.NONE;
        }

        @Override
        double extraLnSplit(double s) {
            return -0.075 * s;
        }

        @Override
        double extraLnAmps(double s) {
            return -0.0075 * s;
        }

        @Override
        double extraLnCapacity(double s) {
            return -0.125 * s;
        }
    },
    /** One double-shaft motor that drags starves both coils and draws more itself (practice). */
    FAN_DRAG(Condition.OTHER, Work.FAN_MOTOR, 0.02) {
        @Override
        Alteration alteration(double s, RoofUnit machine, Temperature condenserAir) {
            return new Alteration(12 / 1.8 * s, 1 - 0.32 * Math.min(s, 1.5), 1, 1 + 0.03 * s);
        }

        @Override
        double condenserFlow(double s) {
            return 1 - 0.32 * Math.min(s, 1.5);
        }

        @Override
        double extraLnFanOnly(double s) {
            return 0.32 * s;
        }
    };

    static final Fault[] ALL = values();

    /** How many there are. */
    public static final int COUNT = ALL.length;

    /** This fault as a hypothesis holds it: made once, since every verdict holds a hundred and more. */
    private final Optional<Fault> supposed = Optional.of(this);
    private final Condition condition;
    private final Work cure;
    private final double hazard;

    Fault(Condition condition, Work cure, double hazard) {
        this.condition = condition;
        this.cure = cure;
        this.hazard = hazard;
    }

    /** The condition that a thermometer can tell; filter and evaporator coil are one. */
    public Condition condition() {
        return condition;
    }

    /** The work that cures it, where it can be cured. */
    public Work cure() {
        return cure;
    }

    /** Whether it sits in the sealed circuit, which nobody opens on a roof. */
    public boolean isSealed() {
        return cure == Work.SEALED_SYSTEM;
    }

    /** Onsets per season of running. */
    public double hazard() {
        return hazard;
    }

    /** Whether it is there again after its work: dirt that gathers does, at its own rate. */
    public boolean comesBack(double ratePerSeason) {
        return ratePerSeason > 0 && (this == CONDENSER_COIL || this == EVAPORATOR_COIL || this == FILTER);
    }

    /** This fault as a hypothesis holds it. */
    Optional<Fault> supposed() {
        return supposed;
    }

    abstract Alteration alteration(double s, RoofUnit machine, Temperature condenserAir);

    double condenserFlow(double s) {
        return 1;
    }

    double extraLnSplit(double s) {
        return 0;
    }

    double extraLnAmps(double s) {
        return 0;
    }

    double extraLnCapacity(double s) {
        return 0;
    }

    double extraLnFanOnly(double s) {
        return 0;
    }

    /** Practice and the published fits: air flow falls by four tenths at s = 1. */
    private static Alteration evaporatorFlow(double s) {
        return new Alteration(0, 1 - 0.40 * Math.min(s, 1.5), 1, 1);
    }
}
