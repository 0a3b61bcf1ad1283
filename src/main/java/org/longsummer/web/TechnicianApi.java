package org.longsummer.web;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.longsummer.access.Right;
import org.longsummer.chain.visit.InstrumentKind;
import org.longsummer.chain.visit.InstrumentKind.Use;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.quantity.Voltage;
import org.longsummer.store.Store;
import org.longsummer.store.Toolkit;
import org.longsummer.wire.Boxes;
import org.longsummer.wire.Shown;

/** Technicians and what they read with. A figure from a sheet is a limit, ±; a standard uncertainty is that over the root of three. */
final class TechnicianApi {
    private static final int LONGEST_NAME = 80;
    private static final int NAMES_OFFERED = 200;
    private static final double ROOT_THREE = Math.sqrt(3);

    private final Store store;

    TechnicianApi(Store store) {
        this.store = store;
    }

    /** All whose instruments are known, the kinds to choose from, and names in visits whose instruments nobody told. */
    record Page(List<ToolkitView> technicians, List<KindView> kinds, List<String> others) {}

    /** A kind of instrument with what it is taken to be worth: twice its standard uncertainty. */
    record KindView(String use, String kind, String phrase, String expanded) {}

    /**
     * What somebody reads with.
     *
     * @param boxes of the form
     * @param lines term and text, with the expanded uncertainty (k = 2)
     */
    record ToolkitView(String name, Map<String, String> boxes, List<UnitView.Term> lines) {}

    void list(Context request) {
        UnitSystem system = Reader.system(request);
        List<ToolkitView> known = store.technicians().all().stream().map(toolkit -> view(toolkit, system)).toList();
        request.json(new Page(known, kinds(system), store.technicians().namesInVisits(Asking.of(request).reach(), NAMES_OFFERED).stream()
                .filter(name -> known.stream().noneMatch(one -> one.name().equals(name))).toList()));
    }

    void save(Context request) {
        Map<String, String> texts = Reader.body(request, UnitApi.Form.class).boxes();
        Boxes boxes = new Boxes(texts == null ? Map.of() : texts);
        String name = boxes.text("name", LONGEST_NAME);
        if (name.isEmpty()) {
            boxes.refuse("name", "A technician needs a name.", "Type it as it stands in the visits.");
        }
        Asking asking = Asking.of(request);
        if (!asking.may(Right.LOOK_AFTER) && !name.equals(asking.name())) {
            boxes.refuse("name", "You may change your own instruments.", "Ask a manager for those of others.");
        }
        Toolkit toolkit = toolkit(boxes, name);
        Refused.ifAny(boxes.problems());
        store.technicians().save(toolkit);
        request.json(view(toolkit, Reader.system(request)));
    }

    private static Toolkit toolkit(Boxes boxes, String name) {
        InstrumentKind thermometer = kind(boxes, "thermometer", Use.THERMOMETER);
        InstrumentKind ambient = kind(boxes, "ambient_thermometer", Use.THERMOMETER);
        InstrumentKind hygrometer = kind(boxes, "hygrometer", Use.HYGROMETER);
        InstrumentKind clamp = kind(boxes, "clamp", Use.CLAMP);
        InstrumentKind voltmeter = kind(boxes, "voltmeter", Use.VOLTMETER);
        Instruments instruments = new Instruments(
                difference(boxes, "thermometer_limit").orElseGet(thermometer::thermometer),
                InstrumentKind.outdoors(difference(boxes, "ambient_thermometer_limit").orElseGet(ambient::thermometer)),
                limit(boxes, "hygrometer_limit", 0.5, 20, "% RH", RelativeHumidity::percent).orElseGet(hygrometer::hygrometer),
                limit(boxes, "clamp_limit", 0.1, 20, "%", percent -> percent / 100).orElseGet(clamp::clampRelative), clamp.clampFloor(),
                limit(boxes, "voltmeter_limit", 0.1, 20, "V", Voltage::new).orElseGet(voltmeter::voltmeter), false);
        return new Toolkit(name, thermometer, ambient, hygrometer, clamp, voltmeter, instruments);
    }

    private static InstrumentKind kind(Boxes boxes, String box, Use use) {
        InstrumentKind kind = boxes.choice(box, InstrumentKind.class, InstrumentKind.of(use).get(0));
        if (kind.use() != use) {
            boxes.refuse(box, "An instrument for another use was chosen.", "Choose one of the list.");
        }
        return kind;
    }

    private static Optional<TemperatureDifference> difference(Boxes boxes, String box) {
        Optional<TemperatureDifference> fahrenheit = limit(boxes, box + "_f", 0.1, 20, "°F", TemperatureDifference::fahrenheit);
        return fahrenheit.or(() -> limit(boxes, box + "_c", 0.05, 11, "°C", TemperatureDifference::new));
    }

    private static <T> Optional<T> limit(Boxes boxes, String box, double least, double most, String unit, DoubleFunction<T> make) {
        return boxes.number(box, least, most, unit).map(limit -> make.apply(limit / ROOT_THREE));
    }

    private static ToolkitView view(Toolkit toolkit, UnitSystem system) {
        Instruments u = toolkit.instruments();
        return new ToolkitView(toolkit.technician(), ToolkitTexts.of(toolkit, system), List.of(
                line("Return and supply air", toolkit.thermometer(), Shown.uncertainty(twice(u.probe()), system).text()),
                line("Outdoor air, with the place", toolkit.ambientThermometer(), Shown.uncertainty(twice(u.ambientProbe()), system).text()),
                line("Humidity", toolkit.hygrometer(), Shown.uncertainty(RelativeHumidity.percent(2 * u.humidity().percent()), system).text()),
                line("Amps", toolkit.clamp(), ToolkitTexts.clamp(u, 2)),
                line("Volts", toolkit.voltmeter(), Shown.uncertainty(new Voltage(2 * u.voltage().volts()), system).text())));
    }

    private static UnitView.Term line(String term, InstrumentKind kind, String expanded) {
        return new UnitView.Term(term, kind.phrase() + ", ±\u00a0" + expanded);
    }

    private static TemperatureDifference twice(TemperatureDifference u) {
        return new TemperatureDifference(2 * u.kelvins());
    }

    private static List<KindView> kinds(UnitSystem system) {
        return List.of(InstrumentKind.values()).stream().map(kind -> new KindView(Boxes.word(kind.use()), Boxes.word(kind), kind.phrase(),
                switch (kind.use()) {
                    case THERMOMETER -> Shown.uncertainty(twice(kind.thermometer()), system).text();
                    case HYGROMETER -> Shown.uncertainty(RelativeHumidity.percent(2 * kind.hygrometer().percent()), system).text();
                    case CLAMP -> ToolkitTexts.clamp(kind.clampRelative(), kind.clampFloor(), 2);
                    case VOLTMETER -> Shown.uncertainty(new Voltage(2 * kind.voltmeter().volts()), system).text();
                })).toList();
    }
}
