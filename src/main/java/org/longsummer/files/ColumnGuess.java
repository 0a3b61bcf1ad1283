package org.longsummer.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Proposes what the columns of somebody else's file are, by names that are in use for them; whoever brings the file says yes or no. */
final class ColumnGuess {
    private static final Pattern FAHRENHEIT = Pattern.compile("(?i).*(\u00b0\\s*f\\b|[\\[(_ ]f[\\])]?$|fahrenheit).*");
    private static final Pattern CELSIUS = Pattern.compile("(?i).*(\u00b0\\s*c\\b|[\\[(_ ]c[\\])]?$|celsius).*");
    private static final Pattern METRES = Pattern.compile("(?i).*([\\[(_ ]m[\\])]?$|met(re|er)s?).*");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:[.,]\\d+)?");
    /** Air of which a number above this is read is in degrees Fahrenheit, below it in degrees Celsius; it is only a proposal. */
    private static final double WARMEST_CELSIUS = 45;
    private static final Set<String> NO_WORDS = Set.of("f", "c", "deg", "the", "of", "a", "in", "pct", "percent", "m", "ft", "v", "temperature", "db");
    private static final Map<String, String> NAMES = names();

    private ColumnGuess() {}

    private static Map<String, String> names() {
        Map<String, String> names = new LinkedHashMap<>();
        names.put("unit_id", "unit|unit id|unit no|unit number|unit nr|asset|asset id|asset no|asset number|ac|ac id|ac unit|machine|machine id");
        names.put("label", "label|name|unit name|title");
        names.put("site", "depot|site|location|yard|branch|lot|depot name");
        names.put("vehicle", "vehicle|vehicle id|vehicle no|rv|coach|rig|registration|fleet no|fleet number|licence plate|license plate");
        names.put("position", "position|roof position|front rear|place on roof");
        names.put("serial", "serial|serial no|serial number|serial nr|s n|sn");
        names.put("make", "make|maker|brand|manufacturer");
        names.put("model", "model|model no|model number|type");
        names.put("nominal_btuh", "btu|btuh|btu h|btu hr|capacity|nominal capacity|cooling capacity|size");
        names.put("refrigerant", "refrigerant|gas");
        names.put("rated_amps", "rated amps|rla|nameplate amps|plate amps|full load amps|fla");
        names.put("rated_volts", "rated volts|nameplate volts|plate volts|rated voltage");
        names.put("installed_on", "installed|installed on|install date|date installed|installation date|fitted|fitted on");
        names.put("warranty_until", "warranty|warranty until|warranty end|warranty ends|warranty expires|warranty expiry");
        names.put("owner", "owner|customer");
        names.put("altitude_", "altitude|elevation|height above sea level");
        names.put("visit_id", "visit id|visit no|check id|check no|reading id|inspection id|inspection no");
        names.put("visited_at", "visited|visited at|visit date|date|date time|date and time|when|checked|checked on|check date|reading date|inspected on"
                + "|inspection date|timestamp");
        names.put("technician", "technician|tech|technician name|checked by|by|inspector|inspected by");
        names.put("return_db_", "return|return air|return temp|return air temp|return dry bulb|air in|inlet air|room return|return air dry bulb");
        names.put("return_wb_", "wet bulb|return wet bulb|return air wet bulb");
        names.put("return_dp_", "dew point|return dew point|return air dew point");
        names.put("supply_db_", "supply|supply air|supply temp|supply air temp|discharge|discharge air|discharge temp|vent|vent temp|register temp"
                + "|air out|outlet air|supply air dry bulb");
        names.put("ambient_db_", "ambient|ambient temp|ambient air|outdoor|outdoor temp|outdoor air|outside|outside temp|outside air|outdoor air temp");
        names.put("return_second_db_", "second return|return 2|return air 2|second thermometer|return temp 2");
        names.put("room_db_", "room|room temp|room air|cabin temp|inside temp");
        names.put("return_rh_pct", "humidity|return humidity|relative humidity|rh|return rh|indoor humidity|return air humidity");
        names.put("ambient_rh_pct", "outdoor humidity|ambient humidity|outside humidity|ambient rh|outdoor rh");
        names.put("amps", "amps|amp draw|current|running amps|total amps|current draw|a");
        names.put("volts", "volts|voltage|line voltage|line volts|mains voltage");
        names.put("run_minutes", "run minutes|minutes|run time|minutes running|run time min|running minutes|running since min");
        names.put("fan_speed", "fan|fan speed");
        names.put("filter_condition", "filter|filter condition|filter state");
        names.put("coil_condition", "coil|coil condition|coil state");
        names.put("work_done", "work|work done|action|service done|done");
        names.put("notes", "notes|note|remark|remarks|comment|comments");
        names.put("altitude_m", "altitude|elevation");
        names.put("time_zone", "time zone|timezone|tz");
        names.put("key", "key|figure|item");
        names.put("value", "value|amount|price|rate");
        names.put("works", "works|work|job|task|planned work|what");
        names.put("planned_for", "planned for|due|due date|by when|date|planned date|scheduled|scheduled for");
        names.put("price", "price|cost|quote|amount");
        names.put("note", "note|notes|remark|remarks|comment");
        names.put("plan_id", "plan id|job id|job no|order no|work order");
        return names;
    }

    /**
     * What the columns of a file may be.
     *
     * @param header names of the columns
     * @param examples a text of each column, empty where there is none
     * @return for each column the name of ours, empty where none comes to mind
     */
    static List<String> of(FileKind kind, List<String> header, List<String> examples) {
        Set<String> taken = new TreeSet<>();
        List<String> columns = new ArrayList<>(header.stream().map(name -> exact(kind, name)).toList());
        columns.forEach(taken::add);
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).isEmpty()) {
                String guess = guess(kind, header.get(i), examples.get(i)).filter(name -> taken.stream().noneMatch(had -> stem(had).equals(stem(name))))
                        .orElse("");
                taken.add(guess);
                columns.set(i, guess);
            }
        }
        return columns;
    }

    /** The name itself when it is one of ours; otherwise empty. */
    static String exact(FileKind kind, String name) {
        String plain = name.strip().toLowerCase(Locale.ROOT);
        return kind.columns().contains(plain) ? plain : "";
    }

    private static String stem(String column) {
        return column.replaceAll("_[fcm]$|_ft$", "_");
    }

    private static Optional<String> guess(FileKind kind, String name, String example) {
        String words = words(name);
        if (words.isEmpty()) {
            return Optional.empty();
        }
        return NAMES.entrySet().stream().filter(entry -> Arrays.stream(entry.getValue().split("\\|")).anyMatch(known -> words(known).equals(words)))
                .map(entry -> measured(entry.getKey(), name, example)).filter(kind.columns()::contains).findFirst();
    }

    private static String measured(String stem, String name, String example) {
        if (stem.equals("altitude_")) {
            return METRES.matcher(name).matches() || example.endsWith("m") ? "altitude_m" : "altitude_ft";
        }
        if (!stem.endsWith("_")) {
            return stem;
        }
        boolean fahrenheit = FAHRENHEIT.matcher(name).matches();
        boolean celsius = CELSIUS.matcher(name).matches() || example.matches("(?i).*\u00b0?\\s*c");
        Matcher number = NUMBER.matcher(example);
        boolean cool = number.find() && Double.parseDouble(number.group().replace(',', '.')) <= WARMEST_CELSIUS;
        return stem + (!fahrenheit && (celsius || cool) ? "c" : "f");
    }

    /** The words of a name in order, without what only says in what it was measured. */
    private static String words(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replaceAll("[\\[(].*?[\\])]", " ").replace("#", " no ").replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
        String kept = Arrays.stream(plain.split(" ")).filter(word -> !NO_WORDS.contains(word)).map(word -> word.equals("number") || word.equals("nr") ? "no" : word)
                .reduce((one, other) -> one + " " + other).orElse("");
        return kept.isEmpty() ? plain : kept;
    }
}
