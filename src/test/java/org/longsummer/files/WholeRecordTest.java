package org.longsummer.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.access.Reach;
import org.longsummer.chain.season.Climate;
import org.longsummer.chain.visit.AirDelivery;
import org.longsummer.chain.visit.AmpsKind;
import org.longsummer.chain.visit.CoilLook;
import org.longsummer.chain.visit.FanSpeed;
import org.longsummer.chain.visit.FilterLook;
import org.longsummer.chain.visit.InstrumentKind;
import org.longsummer.chain.visit.Instruments;
import org.longsummer.chain.visit.Plate;
import org.longsummer.chain.visit.PowerSource;
import org.longsummer.chain.visit.ReadingsBuilder;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.PriceKey;
import org.longsummer.chain.weighing.Quote;
import org.longsummer.quantity.Altitude;
import org.longsummer.quantity.Capacitance;
import org.longsummer.quantity.CoolingCapacity;
import org.longsummer.quantity.Current;
import org.longsummer.quantity.Money;
import org.longsummer.quantity.RelativeHumidity;
import org.longsummer.quantity.Temperature;
import org.longsummer.quantity.TemperatureDifference;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.quantity.Voltage;
import org.longsummer.store.Business;
import org.longsummer.store.Correction;
import org.longsummer.store.Depot;
import org.longsummer.store.Entry;
import org.longsummer.store.Fleet.Place;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Intake;
import org.longsummer.store.Photo;
import org.longsummer.store.PlannedWork;
import org.longsummer.store.PriceScope;
import org.longsummer.store.Quotes;
import org.longsummer.store.Rounds;
import org.longsummer.store.Store;
import org.longsummer.store.Toolkit;
import org.longsummer.store.Typed;
import org.longsummer.store.UnitChange.Because;
import org.longsummer.store.VisitRound;

/** Everything as files and back: nothing is lost, and nothing changes when it comes a second time. */
class WholeRecordTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2031-06-20T15:00:00.123Z"), ZoneOffset.UTC);
    private static final Because BECAUSE = new Because("Ines 内田", LocalDate.of(2031, 6, 12), "=read \"again\",\nover two lines");
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 7, 7};

    @TempDir
    Path directory;

    private static FleetUnit unit(String id, String label) {
        Plate plate = new Plate(Optional.of(CoolingCapacity.btuPerHour(13_500)), Optional.of("R-32"), Optional.of(new Current(12.7)),
                AmpsKind.RLA_PLUS_FAN, Optional.of(new Voltage(115)), false, true, Optional.of(new Capacitance(45)));
        return new FleetUnit(new Unit(id, label, "Ferrow Flats", plate, AirDelivery.DUCTED, Optional.of(LocalDate.of(2019, 4, 2)),
                Altitude.feet(1_230)), "Nimbell", "NB-135", "SO1-5I " + id, "Van 12", "rear", "‏مها‎ & Söhne", Optional.of(LocalDate.of(2032, 4, 1)),
                FleetUnit.Duty.IN_SERVICE);
    }

    /** A visit as a form makes it: typed with a comma here, a blank there. */
    private static Entry visit(String id, String unit, String moment, String volts, Optional<Correction> correction) {
        Instruments instruments = new Instruments(TemperatureDifference.fahrenheit(0.35), TemperatureDifference.fahrenheit(0.8),
                RelativeHumidity.percent(2), 0.02, new Current(0.1), new Voltage(2), true);
        var readings = new ReadingsBuilder().returnDryBulb(Temperature.celsius(25.55)).supplyDryBulb(Temperature.celsius(14))
                .ambientDryBulb(Temperature.celsius(33.3)).amps(new Current(12.1)).volts(new Voltage(1117)).build();
        Typed typed = new Typed(UnitSystem.SI, Map.of("return_db_c", "25,55", "supply_db_c", "14", "ambient_db_c", "33,3", "amps", "12,1",
                "volts", volts, "volts_off", "121"));
        Visit visit = new Visit(id, unit, Instant.parse(moment), ZoneOffset.ofHours(-6), "Ines 内田", instruments, readings, FanSpeed.HIGH,
                PowerSource.SHORE, FilterLook.DIRTY, CoilLook.LIGHT, false, Set.of(Work.FILTER), "-1 °F? \"odd\"\nsecond line");
        return new Entry(visit, typed, "ines", correction);
    }

    private static void fill(Store store) {
        store.depots().save(new Depot("Ferrow Flats", Optional.of(Altitude.feet(1_230)), Optional.of(ZoneId.of("America/Denver")),
                Optional.of(new Climate(List.of(0.0, 0.0, 1.5, 2.0, 4.0, 7.0, 9.25, 9.0, 6.0, 2.0, 0.0, 0.0), MonthDay.of(3, 15), MonthDay.of(10, 31)))));
        store.fleet().add(unit("u1", "Wagon 1"), BECAUSE);
        store.fleet().add(unit("u2", "🚐 Wagon 2"), BECAUSE);
        store.judging().save(visit("v1", "u1", "2031-06-10T14:00:00.250Z", "1 117", Optional.empty()));
        store.judging().save(visit("v2", "u1", "2031-06-09T14:00:00Z", "1117", Optional.of(new Correction("v1", "the day before"))));
        store.judging().save(visit("v3", "u1", "2031-06-11T14:00:00Z", "1117", Optional.empty()));
        store.judging().save(visit("v4", "u2", "2031-06-11T15:00:00Z", "1117", Optional.empty()));
        store.judging().withdraw("v3", "otto", "the rear one");
        store.photos().add("p1", "v2", Photo.Subject.PLATE, "image/jpeg", JPEG, "ines");
        store.photos().add("p2", "v2", Photo.Subject.OTHER, "image/jpeg", JPEG, "ines");
        store.photos().remove("p2", "otto", "a face");
        store.fleet().move("u1", new Place("Wagon 9", "Lake Orrin", "Van 9", "front"), BECAUSE);
        store.fleet().swapPlaces("u1", "u2", BECAUSE);
        store.fleet().replace("u2", unit("u3", "Wagon 3"), "old", FleetUnit.Duty.SOLD, BECAUSE);
        store.fleet().giveVisit("v4", "u1", "v5", BECAUSE);
        InstrumentKind kitchen = InstrumentKind.KITCHEN_THERMOMETER;
        store.technicians().save(new Toolkit("Ines 内田", kitchen, kitchen, InstrumentKind.DIAL_HYGROMETER, InstrumentKind.CLAMP_METER,
                InstrumentKind.MULTIMETER, visit("x", "x", "2031-06-10T14:00:00Z", "1", Optional.empty()).visit().instruments()));
        store.prices().chooseCurrency("EUR");
        store.prices().change(PriceScope.depot("Ferrow Flats"), Map.of(PriceKey.SHOP_RATE, Optional.of(155.5)));
        store.prices().change(PriceScope.unit("u1"), Map.of(PriceKey.NIGHT_PRICE, Optional.of(80.0)));
        store.plans().add(new PlannedWork("plan-1", "u1", List.of(Work.CONDENSER_COIL, Work.FILTER), LocalDate.of(2031, 7, 1),
                Optional.of(new Money(12_050, "EUR")), "=before, \"the\" heat", "Ines 内田", Instant.parse("2031-06-20T15:00:00.123Z"), Optional.empty()));
        store.plans().add(new PlannedWork("plan-2", "u3", List.of(Work.CAPACITOR), LocalDate.of(2031, 7, 2), Optional.empty(), "", "otto",
                Instant.parse("2031-06-20T15:00:00.123Z"), Optional.empty()));
        store.plans().end("plan-2", PlannedWork.As.DONE, "otto");
        store.quotes().take("u1", new Quotes.InHand(new Quote(Work.UNIT_REPLACED, new Money(190_000, "EUR")), "Mill & Söhne",
                Optional.of(LocalDate.of(2031, 6, 19))));
        store.rounds().make(new VisitRound("r1", "=Monday", LocalDate.of(2031, 6, 21), "Ines 内田", Instant.parse("2031-06-20T15:00:00.123Z")),
                store.standings().ofUnits(List.of("u3", "u1"), Reach.EVERYWHERE));
        store.rounds().stand("r1", Map.of("u3", new Rounds.Place("B", "1"), "u1", new Rounds.Place("north, \"gate\"", "2")));
        store.business().write(new Business("Ferrow Cooling", "12 Mill Lane\nFerrow", "555 0100", "R-4711",
                Optional.of(new Business.Picture("image/jpeg", JPEG))));
    }

    /** Advice comes in the background after units are brought in. */
    private static void adviseAll(Store store) {
        while (store.judging().adviseAgain() > 0) {
            continue;
        }
    }

    private Map<String, String> files(Store store, String name) throws IOException {
        Path out = directory.resolve(name);
        WholeRecord.write(store, Reach.EVERYWHERE, out, Progress.SILENT);
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(out)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String path = out.relativize(file).toString();
                files.put(path, path.endsWith(".csv") ? Files.readString(file) : Base64.getEncoder().encodeToString(Files.readAllBytes(file)));
            }
        }
        return files;
    }

    @Test
    void whatComesOutGoesInAgainAndComesOutTheSame() throws IOException, FileRefused {
        try (Store first = Store.open(directory.resolve("first"), CLOCK); Store second = Store.open(directory.resolve("second"), CLOCK)) {
            fill(first);
            Map<String, String> out = files(first, "out");
            assertEquals(Set.of("business.csv", "business_logo", "depots.csv", "photos.csv", "photos/p1", "places.csv", "prices.csv", "quotes.csv", "rounds.csv",
                    "technicians.csv",
                    "unit_changes.csv", "units.csv", "visits.csv", "work.csv"), out.keySet());
            Findings findings = new Findings();
            Intake.Report report = WholeRecord.read(second, directory.resolve("out"), findings, Progress.SILENT);
            assertEquals(List.of(), findings.remarks());
            assertEquals(new Intake.Report(3, 0, 5, 0, List.of()), report);
            assertEquals(out, files(second, "again"));
            List.of(first, second).forEach(WholeRecordTest::adviseAll);
            assertEquals(first.standings().ofUnit("u1").orElseThrow(), second.standings().ofUnit("u1").orElseThrow(), "and is judged the same");
        }
    }

    @Test
    void aSecondTimeNothingChanges() throws IOException, FileRefused {
        try (Store store = Store.open(directory.resolve("store"), CLOCK)) {
            fill(store);
            Map<String, String> before = files(store, "out");
            Intake.Report report = WholeRecord.read(store, directory.resolve("out"), new Findings(), Progress.SILENT);
            assertEquals(new Intake.Report(0, 0, 0, 5, List.of()), report);
            assertEquals(before, files(store, "after"));
            int journal = store.journal().count();
            WholeRecord.read(store, directory.resolve("out"), new Findings(), Progress.SILENT);
            assertEquals(journal, store.journal().count(), "the journal has no new line");
        }
    }

    @Test
    void aVisitTypedWithACommaGoesOutAndInByTheTwoFilesToo() throws IOException, FileRefused {
        try (Store first = Store.open(directory.resolve("first"), CLOCK); Store second = Store.open(directory.resolve("second"), CLOCK)) {
            fill(first);
            Export.run(first, directory.resolve("out"), Progress.SILENT);
            Import.run(second, Optional.of(directory.resolve("out/units.csv")), Optional.of(directory.resolve("out/visits.csv")), "", new Findings(),
                    Progress.SILENT);
            assertEquals(first.visits().find("v5").orElseThrow().visit(), second.visits().find("v5").orElseThrow().visit());
            assertEquals(first.visits().find("v5").orElseThrow().entry().typed(), second.visits().find("v5").orElseThrow().entry().typed());
        }
    }

    @Test
    void aRecordThatContradictsIsRefusedWhole() throws IOException, FileRefused {
        try (Store first = Store.open(directory.resolve("first"), CLOCK); Store second = Store.open(directory.resolve("second"), CLOCK)) {
            fill(first);
            files(first, "out");
            second.fleet().add(unit("u1", "another"), BECAUSE);
            second.judging().save(visit("v1", "u1", "2030-01-01T12:00:00Z", "1", Optional.empty()));
            Map<String, String> before = files(second, "before");
            FileRefused refused = assertThrows(FileRefused.class, () -> WholeRecord.read(second, directory.resolve("out"), new Findings(), Progress.SILENT));
            assertTrue(refused.getMessage().contains("v1"), refused::getMessage);
            assertEquals(before, files(second, "after"));
        }
    }

    /** A stop that contradicts a stored one, or itself, is named with what to do. */
    @Test
    void aRoundThatContradictsIsRefusedWhole() throws IOException, FileRefused {
        try (Store store = Store.open(directory.resolve("store"), CLOCK)) {
            fill(store);
            Map<String, String> before = files(store, "out");
            Path only = Files.createDirectory(directory.resolve("only"));
            String stop = store.rounds().stops("r1", Reach.EVERYWHERE).get(0).visitId();
            Files.writeString(only.resolve("rounds.csv"), "round_id,for_day,made_at,unit_id,visit_id\nr2,2031-06-22,2031-06-20T15:00:00Z,u1," + stop
                    + "\nr2,2031-06-23,2031-06-20T15:00:00Z,u9,x\nr2,2031-06-22,2031-06-20T15:00:00Z,u2,\n");
            FileRefused refused = assertThrows(FileRefused.class, () -> WholeRecord.read(store, only, new Findings(), Progress.SILENT));
            assertEquals(List.of("visit_id", "unit_id", "visit_id"), refused.problems().stream().map(Problem::column).toList(), refused::getMessage);
            assertEquals(before, files(store, "after"));
        }
    }

    @Test
    void aZipFileIsTheSameInOnePiece() throws IOException, FileRefused {
        try (Store store = Store.open(directory.resolve("store"), CLOCK)) {
            fill(store);
            Map<String, String> before = files(store, "out");
            ByteArrayOutputStream zip = new ByteArrayOutputStream();
            RecordZip.pack(directory.resolve("out"), zip);
            Path unpacked = Files.createDirectory(directory.resolve("unpacked"));
            RecordZip.unpack(new ByteArrayInputStream(zip.toByteArray()), unpacked);
            WholeRecord.read(store, unpacked, new Findings(), Progress.SILENT);
            assertEquals(before, files(store, "after"));
        }
        assertThrows(FileRefused.class, () -> RecordZip.unpack(new ByteArrayInputStream("no zip".getBytes(StandardCharsets.UTF_8)),
                Files.createDirectory(directory.resolve("none"))));
    }
}
