package org.longsummer.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.longsummer.web.WebServer.Address;

/** Draws requests that a hurried program, a broken page or a curious person might send, from a seed: any address, anything in it. */
final class OddRequests {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Pattern PART = Pattern.compile("\\{(\\w+)}|\\*");
    private static final List<String> ODD = List.of("", " ", "abc", "-1", "0", "1", "2.5", "12,5", "1e999", "99999999999999999999", "NaN", "\u00bd", "\u202e97", "\u06f7\u06f8",
            "\ud83e\udd75", "\ud83e", "\u0000", "a\nb", "\"", "';drop table visit;--", "%", "%2F", "..", "../x", "a/b", "?", "#", "\\", "<b>", "yes", "no", "null", "true", "[]",
            "{}", "2024-02-29", "2023-02-29", "2026-03-08T02:30", "9999-12-31", "0000-01-01", "0000-01-01T00:00", "9999-12-31T23:59", "-999999999-01-01", "24:00",
            "Europe/Nowhere", "USD", "technician", "12.1", "78", "57.5", "13,500", "230", "50", "\u00e0".repeat(300), "x".repeat(5_000));
    private static final List<String> BOXES = List.of("label", "site", "altitude_ft", "altitude_m", "make", "model", "serial", "nominal_btuh", "rated_amps",
            "rated_amps_kind", "rated_volts", "air_delivery", "refrigerant", "installed_on", "warranty_until", "duty", "old_duty", "vehicle", "roof_position", "place",
            "row", "visited_at", "utc_offset_minutes", "technician", "return_db_f", "return_db_c", "return_rh_pct", "supply_db_f", "supply_at", "ambient_db_f",
            "ambient_at", "amps", "volts", "run_minutes", "fan_speed", "filter_condition", "coil_condition", "work_done", "notes", "reason", "by", "new_id", "unit",
            "other_unit", "happened_on", "name", "title", "owner", "address", "telephone", "licence_number", "time_zone", "opens_month", "opens_day", "closes_month",
            "closes_day", "mean_1_f", "hours_1", "works", "what", "planned_for", "note", "price", "currency", "offered_by", "offered_on", "day", "id", "thermometer",
            "one_probe", "clamp", "capacitor_uf", "capacitor_label_uf", "discount_pct", "quote", "lost_night", "energy_price");
    private static final List<String> FIELDS = List.of("id", "units", "filter", "expected", "choice", "known", "stands", "files", "depots", "role", "name", "reason", "by",
            "most", "days", "key", "password", "boxes");
    private static final List<String> PARAMETERS = List.of("system", "depot", "state", "condition", "text", "duty", "order", "after", "after_unit", "page", "unit", "on_site",
            "scheme", "id", "subject", "by", "older", "since", "begun", "seen", "due", "filter", "warranty", "planned");
    private static final List<String> SOUND = List.of("us", "si", "act", "never_judged", "in_service", "sold", "pressing", "label", "unvisited", "Ferrow Flats", "2",
            "overdue", "ending", "2026-06-01", "https");

    private final Random random;
    private final List<Address> addresses;
    private final Map<String, List<String>> known;

    /** @param known ids that are there, by the names of the parts of addresses */
    OddRequests(long seed, List<Address> addresses, Map<String, List<String>> known) {
        this.random = new Random(seed);
        this.addresses = addresses;
        this.known = known;
    }

    /** A request; without a body where that is null. */
    record Drawn(String method, String path, String contentType, String body) {
        @Override
        public String toString() {
            String shown = String.valueOf(body);
            return method + " " + path + " " + contentType + " " + shown.substring(0, Math.min(1_000, shown.length()));
        }
    }

    Drawn draw() {
        Address address = addresses.get(random.nextInt(addresses.size()));
        String path = PART.matcher(address.path()).replaceAll(part -> Matcher.quoteReplacement(encoded(part(part.group(1))))) + query();
        if (!address.method().equals("POST") && !address.method().equals("PUT")) {
            return new Drawn(address.method(), path, "", null);
        }
        return switch (random.nextInt(12)) {
            case 0 -> new Drawn(address.method(), path, "application/json", odd());
            case 1 -> new Drawn(address.method(), path, odd().replaceAll("[^a-z/]", "") + "text/plain", "boxes=1");
            case 2, 3 -> new Drawn(address.method(), path, "multipart/form-data; boundary=edge", parts());
            case 4 -> new Drawn(address.method(), path, "application/json", "[".repeat(1 + random.nextInt(3_000)));
            default -> new Drawn(address.method(), path, "application/json", json());
        };
    }

    private String part(String name) {
        List<String> there = known.getOrDefault(String.valueOf(name), List.of());
        return there.isEmpty() || random.nextInt(3) == 0 ? odd() : any(there);
    }

    private String query() {
        StringBuilder query = new StringBuilder();
        for (int i = random.nextInt(4); i > 0; i--) {
            query.append(query.isEmpty() ? '?' : '&').append(any(PARAMETERS)).append('=')
                    .append(encoded(random.nextBoolean() ? any(SOUND) : random.nextInt(3) == 0 ? any(known.get("unit")) : odd()));
        }
        return query.toString();
    }

    /** An object with some of the fields that there are, most with something that could be meant. */
    private String json() {
        Map<String, Object> body = new LinkedHashMap<>();
        if (random.nextInt(10) > 0) {
            Map<String, Object> boxes = new LinkedHashMap<>(RunningServer.soundVisit("2026-07-18T12:" + (10 + random.nextInt(50))));
            boxes.put("label", "Heron " + random.nextInt(50));
            boxes.put("reason", "a test");
            boxes.put("by", "Ines");
            for (int i = random.nextInt(5); i > 0; i--) {
                boxes.put(any(BOXES), random.nextInt(10) == 0 ? value(2) : odd());
            }
            body.put("boxes", boxes);
            body.put("id", "r" + random.nextInt(1_000_000));
        }
        for (int i = random.nextInt(4); i > 0; i--) {
            body.put(any(FIELDS), value(3));
        }
        try {
            String text = JSON.writeValueAsString(body);
            return random.nextInt(15) == 0 ? text.substring(0, random.nextInt(text.length())) : text;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Object value(int deepest) {
        int kind = random.nextInt(deepest > 0 ? 8 : 5);
        if (kind < 3) {
            return random.nextInt(3) == 0 ? any(known.get("unit")) : odd();
        }
        if (kind < 5) {
            return kind == 3 ? (Object) random.nextBoolean() : random.nextInt(3) == 0 ? 1e300 : random.nextInt(5) - 1;
        }
        List<Object> several = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            several.add(value(deepest - 1));
        }
        if (kind == 5) {
            return several;
        }
        Map<String, Object> named = new LinkedHashMap<>();
        several.forEach(one -> named.put(random.nextBoolean() ? any(FIELDS) : any(PARAMETERS), one));
        return kind == 6 ? named : List.of(named);
    }

    private String parts() {
        String name = any(List.of("units", "visits", "file", "prices", "record", "files", odd().replaceAll("[\\r\\n\"\\x00]", "")));
        String header = any(List.of("unit_id,label\n", "unit_id,visited_at,return_db_f\n", "key,amount,unit\n", "PK\u0003\u0004", ""));
        return "--edge\r\nContent-Disposition: form-data; name=\"" + name + "\"; filename=\"" + name + ".csv\"\r\nContent-Type: text/csv\r\n\r\n" + header + odd() + ","
                + odd() + "," + odd() + (random.nextInt(8) == 0 ? "" : "\r\n--edge--\r\n");
    }

    private String odd() {
        return any(ODD);
    }

    private <T> T any(List<T> several) {
        return several.get(random.nextInt(several.size()));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
