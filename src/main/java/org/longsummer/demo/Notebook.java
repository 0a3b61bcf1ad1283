package org.longsummer.demo;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import org.longsummer.quantity.Decimal;

/** What one visitor writes down of a machine: what it truly shows, what the instruments make of it, and now and then a slip. */
final class Notebook {
    private static final double DEAD = 1.0;

    private final Machine machine;
    private final Story.Kit kit;
    private final Technician technician;
    private final Random chance;
    private final double thermometerBias;
    private final double clampBias;

    Notebook(Machine machine, Story.Kit kit, Technician technician, int season, Random chance) {
        this.machine = machine;
        this.kit = kit;
        this.technician = technician;
        this.chance = chance;
        this.thermometerBias = technician.thermometerBias(season);
        this.clampBias = technician.clampBias(season);
    }

    /** Cells by column, without the unit and the work done. */
    Map<String, String> read(Surroundings around, Fault fault, double severity, Slip slip) {
        double size = Math.min(severity, 1);
        boolean dead = fault == Fault.COMPRESSOR_WEAR && severity > DEAD;
        ForwardModel.Conditions now = around.inside();
        double split = dead ? 0.6 : ForwardModel.split(machine, now, fault, size);
        double amps = dead ? machine.fanAmps() : ForwardModel.amps(machine, now, fault, size);
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("technician", kit == Story.Kit.THERMOMETER ? "owner" : technician.name());
        air(cells, around, split, slip);
        cells.put("fan_speed", slip == Slip.FAN_LOW ? "low" : "high");
        cells.put("run_minutes", "" + (slip == Slip.SHORT_RUN ? 3 : 15 + chance.nextInt(12)));
        if (kit != Story.Kit.THERMOMETER) {
            power(cells, around, amps, slip);
            looks(cells, fault, size);
            optional(cells, now, fault, dead ? 0 : size);
        }
        cells.put("notes", note(fault, size, dead));
        return cells;
    }

    private void air(Map<String, String> cells, Surroundings around, double split, Slip slip) {
        ForwardModel.Conditions now = around.inside();
        Climate.Air outdoors = around.outdoors();
        boolean onGround = kit == Story.Kit.THERMOMETER || chance.nextInt(10) == 0;
        double returnAir = shown(now.returnDryBulb());
        double supply = shown(now.returnDryBulb() - split) + 0.3 * chance.nextGaussian();
        double swapped = slip == Slip.SWAPPED ? returnAir : supply;
        cells.put("return_db_f", tenth(slip == Slip.SWAPPED ? supply : returnAir));
        cells.put("supply_db_f", tenth(slip == Slip.CELSIUS ? (supply - 32) / 1.8 : slip == Slip.DECIMAL ? supply * 10 : swapped));
        cells.put("supply_at", "near_register");
        if (kit == Story.Kit.FULL) {
            double humidity = Humidity.percent(now.returnDryBulb(), now.returnDewPoint()) + 2.5 * chance.nextGaussian();
            cells.put("return_rh_pct", whole(Math.max(12, humidity)));
            cells.put("ambient_rh_pct", whole(Humidity.percent(outdoors.dryBulb(), outdoors.dewPoint())));
        }
        cells.put("ambient_db_f", tenth(shown(onGround ? outdoors.dryBulb() - 2 : now.ambient())));
        cells.put("ambient_at", onGround ? "ground" : "inlet");
    }

    private void power(Map<String, String> cells, Surroundings around, double amps, Slip slip) {
        double shownAmps = amps * (1 + clampBias + 0.008 * chance.nextGaussian());
        double noted = switch (slip == null ? Slip.SAVED_TWICE : slip) {
            case CLAMP_AROUND_BOTH -> 0.1;
            case CLAMP_AROUND_CORD -> shownAmps + 13.5;
            default -> shownAmps;
        };
        cells.put("amps", Decimal.text(noted, 2));
        cells.put("volts", whole(around.inside().volts() + 0.5 * chance.nextGaussian()));
        cells.put("power_source", around.onGenerator() ? "generator" : "shore");
    }

    private void looks(Map<String, String> cells, Fault fault, double severity) {
        if (chance.nextInt(4) > 0) {
            cells.put("filter_condition", fault == Fault.FILTER && severity > 0.35 ? "dirty" : "clean");
        }
        if (chance.nextInt(3) > 0) {
            double dirt = fault == Fault.CONDENSER_FOULING ? severity : 0.1;
            cells.put("coil_condition", dirt > 0.7 ? "heavy" : dirt > 0.35 ? "light" : "clean");
        }
    }

    private void optional(Map<String, String> cells, ForwardModel.Conditions now, Fault fault, double severity) {
        boolean suspicious = severity > 0.4;
        if (often(fault == Fault.CONDENSER_FOULING && suspicious)) {
            double rise = 21 + (fault == Fault.CONDENSER_FOULING ? 9 * severity : 0);
            cells.put("condenser_leaving_db_f", tenth(shown(now.ambient() + rise) + chance.nextGaussian()));
        }
        if (often(fault == Fault.DIVIDER_LEAK && suspicious)) {
            cells.put("room_db_f", tenth(shown(now.returnDryBulb() + (fault == Fault.DIVIDER_LEAK ? 6 * severity : 0.3))));
        }
        if (often(fault == Fault.FAN_DRAG && suspicious)) {
            cells.put("fan_only_amps", Decimal.text(machine.fanAmps() * (1 + (fault == Fault.FAN_DRAG ? 0.5 * severity : 0)), 2));
        }
        if (often(fault == Fault.CAPACITOR && suspicious)) {
            double left = machine.capacitor() * (1 - (fault == Fault.CAPACITOR ? 0.3 * severity : 0));
            cells.put("capacitor_uf", Decimal.text(left + 0.3 * chance.nextGaussian(), 1));
        }
        if (chance.nextInt(8) == 0) {
            cells.put("start_amps", whole((machine.hasSoftStarter() ? 26 : 57) + 3 * chance.nextGaussian()));
        }
    }

    private boolean often(boolean suspected) {
        return chance.nextInt(suspected ? 2 : 12) == 0;
    }

    private String note(Fault fault, double severity, boolean dead) {
        if (dead) {
            return "fan runs, compressor silent";
        }
        if (fault == Fault.EVAPORATOR_COIL && severity > 0.95) {
            return "frost on the coil";
        }
        return chance.nextInt(15) == 0 ? "guest says it cools slowly" : "";
    }

    private double shown(double degrees) {
        return degrees + thermometerBias + 0.25 * chance.nextGaussian();
    }

    private static String tenth(double number) {
        return Decimal.text(number, 1);
    }

    private static String whole(double number) {
        return Decimal.text(number, 0);
    }
}
