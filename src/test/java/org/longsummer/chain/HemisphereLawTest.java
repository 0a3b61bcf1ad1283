package org.longsummer.chain;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import org.longsummer.files.UnitsFile;
import org.longsummer.files.VisitsFile;

/** The same fleet half a year later on the other half of the earth: the same dates half a year later. */
class HemisphereLawTest {
    private static final Path FLEET = Path.of("src/test/resources/fleet-dev");
    /** From then on the months of its visits say where a unit is. */
    private static final int KNOWN_FROM = 6;
    /** Months are not of one length, and until the sixth visit the clock was another: not the same day, but the same month. */
    private static final int SAME_DAYS = 31;

    @Test
    void limitDatesMoveWithTheSummer() throws IOException, FileRefused {
        Map<String, Unit> units = new TreeMap<>();
        List<Visit> north = new ArrayList<>();
        Findings findings = new Findings();
        UnitsFile.read(FLEET.resolve("units.csv"), id -> Optional.empty(), findings).forEach((id, unit) -> units.put(id, unit.unit()));
        VisitsFile.read(FLEET.resolve("visits.csv"), units::containsKey, findings, north::add);
        Map<String, LocalDate> northern = limits(units, north);
        Map<String, LocalDate> southern = limits(units, north.stream().map(HemisphereLawTest::halfAYearLater).toList());
        int together = 0;
        int apart = 0;
        for (Map.Entry<String, LocalDate> limit : northern.entrySet()) {
            LocalDate there = southern.get(limit.getKey());
            if (there != null && Math.abs(ChronoUnit.DAYS.between(limit.getValue().plusMonths(6), there)) <= SAME_DAYS) {
                together++;
            } else {
                apart++;
            }
        }
        assertTrue(together > 30 && together >= 9 * apart, together + " dates moved with the summer, " + apart + " did not");
    }

    private static Map<String, LocalDate> limits(Map<String, Unit> units, List<Visit> visits) {
        FleetProspects fleet = new FleetProspects(LifeCurve.RENTAL, Optional.empty());
        Map<String, UnitProspects> prospects = new HashMap<>();
        Map<String, Integer> seen = new HashMap<>();
        Map<String, LocalDate> limits = new TreeMap<>();
        Assessment.ofFleet(units, visits, verdict -> {
            String id = verdict.visit().unitId();
            Prospect prospect = prospects.computeIfAbsent(id, unit -> fleet.of(units.get(unit))).after(verdict);
            if (seen.merge(id, 1, Integer::sum) >= KNOWN_FROM) {
                prospect.limit().p50().ifPresent(day -> limits.put(verdict.visit().id(), day));
            }
        });
        return limits;
    }

    private static Visit halfAYearLater(Visit visit) {
        return new Visit(visit.id(), visit.unitId(), visit.at().atOffset(visit.offset()).plusMonths(6).toInstant(), visit.offset(),
                visit.technician(), visit.instruments(), visit.readings(), visit.fanSpeed(), visit.powerSource(), visit.filter(), visit.coil(),
                visit.icedCoil(), visit.workDone(), visit.notes());
    }
}
