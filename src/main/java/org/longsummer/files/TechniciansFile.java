package org.longsummer.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.longsummer.chain.visit.InstrumentKind;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.Voltage;
import org.longsummer.store.Toolkit;

/** A {@code technicians.csv}: who reads with what, kinds and standard uncertainties. */
final class TechniciansFile {
    static final String NAME = "technicians.csv";
    private static final List<String> COLUMNS = List.of("technician", "thermometer", "ambient_thermometer", "hygrometer", "clamp", "voltmeter",
            "probe_u_f", "ambient_probe_u_f", "humidity_u_pct", "clamp_u_pct", "clamp_floor_u_a", "voltage_u_v");

    private TechniciansFile() {}

    static void write(Path file, List<Toolkit> toolkits) throws IOException {
        try (RecordWriter writer = new RecordWriter(file, COLUMNS)) {
            toolkits.forEach(toolkit -> writer.row(cells(toolkit)));
        }
    }

    private static List<String> cells(Toolkit toolkit) {
        Instruments u = toolkit.instruments();
        return List.of(Cell.escaped(toolkit.technician()), Row.word(toolkit.thermometer()), Row.word(toolkit.ambientThermometer()),
                Row.word(toolkit.hygrometer()), Row.word(toolkit.clamp()), Row.word(toolkit.voltmeter()),
                Shortest.text(u.probe().fahrenheit(), u.probe(), TemperatureDifference::fahrenheit),
                Shortest.text(u.ambientProbe().fahrenheit(), u.ambientProbe(), TemperatureDifference::fahrenheit),
                Shortest.text(u.humidity().percent(), u.humidity(), RelativeHumidity::percent),
                Shortest.text(100 * u.clampRelative(), u.clampRelative(), percent -> percent / 100), Shortest.text(u.clampFloor().amperes()),
                Shortest.text(u.voltage().volts()));
    }

    static void read(Path file, Findings findings, Consumer<Toolkit> toolkits) throws IOException {
        Sheet.read(file, new Layout(COLUMNS, List.of(List.of("technician"))), findings, row -> {
            String name = row.required("technician", "name the technician as visits do");
            InstrumentKind thermometer = row.word("thermometer", InstrumentKind.class, InstrumentKind.DIGITAL_THERMOMETER);
            InstrumentKind ambient = row.word("ambient_thermometer", InstrumentKind.class, InstrumentKind.DIGITAL_THERMOMETER);
            InstrumentKind hygrometer = row.word("hygrometer", InstrumentKind.class, InstrumentKind.DIGITAL_HYGROMETER);
            InstrumentKind clamp = row.word("clamp", InstrumentKind.class, InstrumentKind.CLAMP_METER);
            InstrumentKind voltmeter = row.word("voltmeter", InstrumentKind.class, InstrumentKind.MULTIMETER);
            Instruments instruments = new Instruments(row.quantity("probe_u_f", TemperatureDifference::fahrenheit).orElseGet(thermometer::thermometer),
                    row.quantity("ambient_probe_u_f", TemperatureDifference::fahrenheit).orElseGet(() -> InstrumentKind.outdoors(ambient.thermometer())),
                    row.quantity("humidity_u_pct", RelativeHumidity::percent).orElseGet(hygrometer::hygrometer),
                    row.quantity("clamp_u_pct", percent -> percent / 100).orElseGet(clamp::clampRelative),
                    row.quantity("clamp_floor_u_a", Current::new).orElseGet(clamp::clampFloor),
                    row.quantity("voltage_u_v", Voltage::new).orElseGet(voltmeter::voltmeter), false);
            if (row.isSound()) {
                toolkits.accept(new Toolkit(name, thermometer, ambient, hygrometer, clamp, voltmeter, instruments));
            }
        });
    }
}
