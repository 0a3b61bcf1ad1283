package org.longsummer.phone;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.Unit;
import org.longsummer.phone.Questions.Waiting;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.Voltage;

/** Units and forms from a seeded generator: most as a technician fills them, many with gaps, slips and nonsense. */
final class OddVisits {
    private static final List<String> WORKS = List.of("filter", "evaporator_coil", "condenser_coil", "capacitor", "divider", "fan_motor",
            "sealed_system", "unit_replaced", "sealing");
    private static final List<String> NONSENSE = List.of("abc", "12,,5", "1e5", "-", "7.", ".5", "99999", "-40", "0", "0.1", "850", "7 8",
            "\u221212,5", "½");

    private final Random random;

    OddVisits(long seed) {
        random = new Random(seed);
    }

    Unit unit(String id, List<String> sites) {
        Plate plate = new Plate(maybe(0.9, CoolingCapacity.btuPerHour(List.of(11_000, 13_500, 15_000, 9_200).get(random.nextInt(4)))),
                maybe(0.8, List.of("R-22", "R-410A", "R-32").get(random.nextInt(3))), maybe(0.7, new Current(9 + 7 * random.nextDouble())),
                AmpsKind.values()[random.nextInt(4)], maybe(0.8, new Voltage(115)), chance(0.05), chance(0.1),
                maybe(0.2, new Capacitance(35 + random.nextInt(30))));
        return new Unit(id, "Unit " + id, sites.get(random.nextInt(sites.size())), plate, AirDelivery.values()[random.nextInt(3)],
                Optional.empty(), new Altitude(random.nextInt(2_500)));
    }

    /** A form filled in some days after another. */
    Waiting form(String id, int day) {
        Map<String, String> boxes = new LinkedHashMap<>();
        boolean celsius = chance(0.3);
        boxes.put("system", celsius ? "si" : "us");
        put(boxes, 0.99, "visited_at", moment(day));
        put(boxes, 0.95, "utc_offset_minutes", "-360");
        put(boxes, 0.9, "technician", "T0" + random.nextInt(5));
        readings(boxes, celsius);
        looks(boxes);
        put(boxes, 0.15, "work_done", WORKS.get(random.nextInt(WORKS.size())) + (chance(0.3) ? ",filter" : ""));
        put(boxes, 0.2, "notes", "wind & \"gusts\"\n\u00e9\u00df\u3042 <b>");
        if (chance(0.1)) {
            List<String> names = List.copyOf(boxes.keySet());
            boxes.put(names.get(random.nextInt(names.size())), NONSENSE.get(random.nextInt(NONSENSE.size())));
        }
        return new Waiting(id, boxes);
    }

    /** In the seasons of three years; sometimes at the very moment of another. */
    private String moment(int day) {
        int year = 2024 + day / 8;
        String month = "0" + (4 + day % 5);
        String hour = chance(0.1) ? "12:00" : (10 + random.nextInt(9)) + ":" + (10 + random.nextInt(49));
        return year + "-" + month + "-" + (chance(0.2) ? "15" : String.valueOf(10 + random.nextInt(19))) + "T" + hour;
    }

    private void readings(Map<String, String> boxes, boolean celsius) {
        double ambient = 62 + 48 * random.nextDouble();
        double back = 66 + 22 * random.nextDouble();
        double split = chance(0.85) ? 19 + 4 * random.nextGaussian() : 40 * random.nextDouble() - 8;
        temperature(boxes, 0.97, "return_db", back, celsius);
        temperature(boxes, 0.95, "supply_db", back - split, celsius);
        temperature(boxes, 0.9, "ambient_db", ambient, celsius);
        if (chance(0.8)) {
            number(boxes, 0.95, "return_rh_pct", 25 + 60 * random.nextDouble(), 0);
        } else {
            temperature(boxes, 1, chance(0.5) ? "return_wb" : "return_dp", back - 8 - 12 * random.nextDouble(), celsius);
        }
        number(boxes, 0.3, "ambient_rh_pct", 15 + 70 * random.nextDouble(), 0);
        number(boxes, 0.85, "amps", chance(0.9) ? 8 + 0.06 * ambient + random.nextGaussian() : 70 * random.nextDouble(), 1);
        number(boxes, 0.7, "volts", 104 + 24 * random.nextDouble(), 0);
        number(boxes, 0.8, "run_minutes", chance(0.8) ? 15 + random.nextInt(25) : random.nextInt(16), 0);
        temperature(boxes, 0.15, "condenser_entering_db", ambient + 6 * random.nextGaussian(), celsius);
        temperature(boxes, 0.15, "condenser_leaving_db", ambient + 20 + 6 * random.nextGaussian(), celsius);
        temperature(boxes, 0.1, "return_second_db", back + 2 * random.nextGaussian(), celsius);
        temperature(boxes, 0.15, "room_db", back + 2 * random.nextGaussian(), celsius);
        number(boxes, 0.15, "fan_only_amps", 2 + random.nextDouble(), 1);
        number(boxes, 0.15, "start_amps", 35 + 40 * random.nextDouble(), 0);
        number(boxes, 0.15, "capacitor_uf", 25 + 35 * random.nextDouble(), 1);
        number(boxes, 0.3, "volts_off", 116 + 4 * random.nextGaussian(), 0);
    }

    private void looks(Map<String, String> boxes) {
        put(boxes, 0.6, "filter_condition", List.of("clean", "dirty", "missing").get(random.nextInt(3)));
        put(boxes, 0.4, "coil_condition", List.of("clean", "light", "heavy").get(random.nextInt(3)));
        put(boxes, 0.9, "fan_speed", chance(0.95) ? "high" : "low");
        put(boxes, 0.7, "power_source", List.of("shore", "generator", "inverter").get(random.nextInt(3)));
        put(boxes, 0.6, "supply_at", List.of("discharge", "near_register", "far_register").get(random.nextInt(3)));
        put(boxes, 0.6, "ambient_at", chance(0.5) ? "inlet" : "ground");
        put(boxes, 0.03, "iced_coil", "yes");
        put(boxes, 0.2, "one_probe", "yes");
    }

    private void temperature(Map<String, String> boxes, double share, String name, double fahrenheit, boolean celsius) {
        number(boxes, share, name + (celsius ? "_c" : "_f"), celsius ? (fahrenheit - 32) / 1.8 : fahrenheit, 1);
    }

    private void number(Map<String, String> boxes, double share, String name, double value, int decimals) {
        String text = Decimal.text(value, decimals);
        put(boxes, share, name, chance(0.1) ? text.replace('.', ',') : text);
    }

    private void put(Map<String, String> boxes, double share, String name, String text) {
        if (chance(share)) {
            boxes.put(name, text);
        }
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private <T> Optional<T> maybe(double share, T value) {
        return chance(share) ? Optional.of(value) : Optional.empty();
    }
}
