package org.longsummer.wire;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.longsummer.chain.visit.AmbientAt;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.Reading;
import org.longsummer.chain.visit.Readings;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.SupplyAt;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.quantity.Measure;
import org.longsummer.quantity.UnitSystem;

/**
 * A visit as it comes from a form: texts by the names of their boxes, which are the names of the columns of the CSV files.
 *
 * <p>What is merely impossible is taken as it is and left to the chain to question; refused is what has no meaning.
 */
public final class VisitForm {
    /** Boxes whose text is kept beside the quantity, as typed. */
    private static final List<String> KEPT = Stream.concat(Stream.of("volts_off"), Reading.NAMES.stream()).toList();
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_NOTES = 4000;

    private final Boxes boxes;
    private final Map<String, String> texts;
    private final Instant now;

    /**
     * @param texts by the names of the boxes; null for none
     * @param now the present moment: a visit cannot lie after it
     */
    public VisitForm(Map<String, String> texts, Instant now) {
        this.texts = texts == null ? Map.of() : texts;
        this.boxes = new Boxes(this.texts);
        this.now = now;
    }

    /** What was wrong with the boxes that were read so far. */
    public List<Problem> problems() {
        return boxes.problems();
    }

    /** The visit as far as it can be read, by instruments of the usual kind; {@link #problems()} then names the rest. */
    public Visit visit(String id, String unitId, Optional<PlaceClock> place) {
        return visit(id, unitId, place, technician -> Instruments.DEFAULT);
    }

    /**
     * The visit as far as it can be read; {@link #problems()} then names the rest.
     *
     * @param instrumentsOf the instruments of a technician
     */
    public Visit visit(String id, String unitId, Optional<PlaceClock> place, Function<String, Instruments> instrumentsOf) {
        String technician = boxes.text("technician", LONGEST_NAME);
        Instruments usual = instrumentsOf.apply(technician);
        Instruments instruments = new Instruments(usual.probe(), usual.ambientProbe(), usual.humidity(), usual.clampRelative(),
                usual.clampFloor(), usual.voltage(), boxes.isYes("one_probe"));
        boxes.number("volts_off", -10_000, 10_000, "V");
        LocalDateTime at = moment(place);
        ZoneOffset offset = place.map(clock -> clock.offset(at)).orElseGet(this::typedOffset);
        Set<Work> work = boxes.choices("work_done", Work.class);
        return new Visit(id, unitId, at.toInstant(offset), offset, technician, instruments, readings(),
                boxes.choice("fan_speed", FanSpeed.class, FanSpeed.UNKNOWN),
                boxes.choice("power_source", PowerSource.class, PowerSource.UNKNOWN),
                boxes.choice("filter_condition", FilterLook.class, FilterLook.NOT_LOOKED),
                boxes.choice("coil_condition", CoilLook.class, CoilLook.NOT_LOOKED), boxes.isYes("iced_coil"), work,
                boxes.text("notes", LONGEST_NOTES));
    }

    /**
     * Asks for what a visit to be saved must have beyond what one to be judged needs.
     *
     * @param corrects it takes the place of an earlier one
     */
    public void askForWhatSavingNeeds(boolean corrects) {
        if (boxes.text("visited_at").isEmpty()) {
            boxes.refuse("visited_at", "A visit needs its day and time.", "Type when the readings were taken.");
        }
        if (corrects && reason().isEmpty()) {
            boxes.refuse("reason", "A correction needs its reason.", "Say in a few words what was wrong.");
        }
    }

    /** Why it takes the place of an earlier one. */
    public String reason() {
        return boxes.text("reason", LONGEST_NOTES);
    }

    /** The texts that are kept beside the quantities. */
    public Map<String, String> kept() {
        Map<String, String> kept = new LinkedHashMap<>();
        KEPT.forEach(box -> boxes.text(box).ifPresent(text -> kept.put(box, text)));
        return kept;
    }

    /** The system in which the readings were typed. */
    public UnitSystem typedIn() {
        boolean celsius = kept().keySet().stream().anyMatch(box -> box.endsWith("_c")) || "si".equals(texts.get("system"));
        return celsius ? UnitSystem.SI : UnitSystem.US;
    }

    /** The wall clock at the place. */
    private LocalDateTime moment(Optional<PlaceClock> place) {
        LocalDateTime here = LocalDateTime.ofEpochSecond(now.getEpochSecond(), now.getNano(),
                place.map(clock -> clock.offset(now)).orElseGet(this::typedOffset));
        return boxes.text("visited_at").map(text -> {
            try {
                LocalDateTime given = Boxes.momentOf(text);
                if (given.isAfter(here.plus(Duration.ofDays(1))) || given.getYear() < 1970) {
                    boxes.refuse("visited_at", "A visit lies between 1970 and now, " + here.truncatedTo(ChronoUnit.MINUTES)
                            + " by the clock here.", "Check day and year; if they are right, that clock is wrong.");
                    return here;
                }
                return given;
            } catch (DateTimeException e) {
                boxes.refuse("visited_at", "A day and time such as 2026-07-02T14:05 belongs here.", "Type both.");
                return here;
            }
        }).orElse(here);
    }

    /** The offset of the reader's device, for a place whose time zone is not known. */
    private ZoneOffset typedOffset() {
        return boxes.number("utc_offset_minutes", -1080, 1080, "minutes")
                .map(minutes -> ZoneOffset.ofTotalSeconds((int) (minutes * 60))).orElse(ZoneOffset.UTC);
    }

    private Readings readings() {
        ReadingsBuilder read = new ReadingsBuilder().supplyAt(boxes.choice("supply_at", SupplyAt.class, SupplyAt.UNKNOWN))
                .ambientAt(boxes.choice("ambient_at", AmbientAt.class, AmbientAt.UNKNOWN));
        for (Reading<?> reading : Reading.ALL) {
            Measure<?> measure = reading.measure();
            if (reading.isTemperature()) {
                boxes.temperature(reading.name()).ifPresent(temperature -> reading.takeRecorded(read, temperature.kelvins()));
            } else {
                boxes.number(reading.name(), measure.least(), measure.most(), measure.symbol())
                        .ifPresent(number -> reading.takeWritten(read, number));
            }
        }
        return read.build();
    }
}
