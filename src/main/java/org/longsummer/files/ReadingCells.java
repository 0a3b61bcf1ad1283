package org.longsummer.files;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.longsummer.chain.visit.Moisture;
import org.longsummer.chain.visit.Readings;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;

/** Readings of which the typed text is not known, as cells that read back as exactly the same quantities. */
final class ReadingCells {
    private final Map<String, String> cells = new LinkedHashMap<>();

    private ReadingCells() {}

    static Map<String, String> of(Readings readings) {
        ReadingCells cells = new ReadingCells();
        cells.temperature("return_db_f", readings.returnDryBulb());
        readings.returnMoisture().ifPresent(cells::moisture);
        cells.temperature("supply_db_f", readings.supplyDryBulb());
        cells.temperature("ambient_db_f", readings.ambientDryBulb());
        cells.humidity("ambient_rh_pct", readings.ambientHumidity());
        cells.number("amps", readings.amps().map(amps -> amps.amperes()));
        cells.number("volts", readings.volts().map(volts -> volts.volts()));
        cells.number("run_minutes", readings.runTime().map(time -> time.minutes()));
        cells.temperature("condenser_entering_db_f", readings.condenserEntering());
        cells.temperature("condenser_leaving_db_f", readings.condenserLeaving());
        cells.temperature("room_db_f", readings.roomDryBulb());
        cells.number("fan_only_amps", readings.fanOnlyAmps().map(amps -> amps.amperes()));
        cells.number("start_amps", readings.startPeak().map(amps -> amps.amperes()));
        cells.number("capacitor_uf", readings.capacitor().map(capacitor -> capacitor.microfarads()));
        return cells.cells;
    }

    private void moisture(Moisture moisture) {
        if (moisture instanceof Moisture.Relative relative) {
            humidity("return_rh_pct", Optional.of(relative.humidity()));
        } else if (moisture instanceof Moisture.WetBulb wetBulb) {
            temperature("return_wb_f", Optional.of(wetBulb.temperature()));
        } else if (moisture instanceof Moisture.DewPoint dewPoint) {
            temperature("return_dp_f", Optional.of(dewPoint.temperature()));
        }
    }

    private void temperature(String column, Optional<Temperature> temperature) {
        temperature.ifPresent(t -> cells.put(column, Shortest.text(t.fahrenheit(), t, Temperature::fahrenheit)));
    }

    private void humidity(String column, Optional<RelativeHumidity> humidity) {
        humidity.ifPresent(h -> cells.put(column, Shortest.text(h.percent(), h, RelativeHumidity::percent)));
    }

    private void number(String column, Optional<Double> number) {
        number.ifPresent(n -> cells.put(column, Shortest.text(n)));
    }
}
