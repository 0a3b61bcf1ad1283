package org.longsummer.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import org.longsummer.files.UnitsFile;
import org.longsummer.files.VisitsFile;
import org.longsummer.phone.Questions.Waiting;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.wire.JsonWriter;
import org.longsummer.wire.VerdictRecord;
import org.longsummer.wire.VerdictView;

/** The JavaScript that a phone judges by says what the server says: identical words, every number within 1e-9 of itself. */
class SameAnswerTest {
    private static final Path FLEET = Path.of("src/test/resources/fleet-dev");
    private static final int RANDOM_UNITS = 1_000;
    private static final int FORMS_WAITING = 9;
    private static final int BATCH = 50;
    private static final long SEED = 20_260_702;

    private static final Map<String, Unit> UNITS = new TreeMap<>();
    private static final Map<String, List<Visit>> VISITS = new TreeMap<>();
    private static Closings closings;
    private static CoreInBrowser browser;

    @BeforeAll
    static void readFleet() throws IOException, FileRefused {
        Findings findings = new Findings();
        List<Visit> all = new ArrayList<>();
        UnitsFile.read(FLEET.resolve("units.csv"), id -> Optional.empty(), findings).forEach((id, unit) -> UNITS.put(id, unit.unit()));
        VisitsFile.read(FLEET.resolve("visits.csv"), UNITS::containsKey, findings, all::add);
        findings.refuseIfAny();
        all.forEach(visit -> VISITS.computeIfAbsent(visit.unitId(), id -> new ArrayList<>()).add(visit));
        closings = Assessment.learn(UNITS, all);
        browser = new CoreInBrowser();
    }

    @AfterAll
    static void closeBrowser() {
        browser.close();
    }

    private static UnitSystem system(int index) {
        return UnitSystem.values()[index % 2];
    }

    private static String word(UnitSystem system) {
        return system == UnitSystem.US ? "us" : "si";
    }

    /** The phone is given a part of what was learned; the server's verdict here is from all of it. */
    @Test
    void ofASimulatedFleet() {
        SameAnswers same = new SameAnswers();
        List<Questions> asked = new ArrayList<>();
        List<Unit> units = List.copyOf(UNITS.values());
        for (int i = 0; i < units.size(); i++) {
            asked.add(Questions.of(units.get(i), VISITS.get(units.get(i).id()), List.of(), closings).ask("verdicts", word(system(i))));
        }
        List<List<String>> answers = browser.answers(asked);
        for (int i = 0; i < units.size(); i++) {
            same.compare(units.get(i).id(), server(units.get(i), system(i)), answers.get(i).get(0));
        }
        report("simulated fleet", same);
    }

    private static String server(Unit unit, UnitSystem system) {
        JsonWriter json = new JsonWriter();
        json.array(Assessment.ofUnit(unit, VISITS.get(unit.id()), closings), verdict -> VerdictRecord.write(json, VerdictView.of(verdict, system)));
        return json.toString();
    }

    @Test
    void ofTenThousandRandomVisitsOddOnesToo() {
        SameAnswers same = new SameAnswers();
        OddVisits odd = new OddVisits(SEED);
        List<String> sites = UNITS.values().stream().map(Unit::site).distinct().toList();
        for (int from = 0; from < RANDOM_UNITS; from += BATCH) {
            List<Questions> asked = new ArrayList<>();
            for (int i = from; i < from + BATCH; i++) {
                asked.add(random(odd, sites, i));
            }
            List<List<String>> answers = browser.answers(asked);
            for (int i = 0; i < BATCH; i++) {
                List<String> here = asked.get(i).answeredByJava();
                for (int question = 0; question < here.size(); question++) {
                    same.compare("unit " + (from + i) + " question " + question, here.get(question), answers.get(i).get(question));
                }
            }
        }
        report((FORMS_WAITING + 1) * RANDOM_UNITS + " random visits", same);
    }

    private static Questions random(OddVisits odd, List<String> sites, int index) {
        List<Waiting> forms = new ArrayList<>();
        for (int i = 0; i < FORMS_WAITING; i++) {
            forms.add(odd.form("v" + index + "-" + i, i * 2));
        }
        String system = word(system(index));
        return Questions.of(odd.unit("u" + index, sites), List.of(), forms, closings).ask("verdicts", system)
                .judge(odd.form("v" + index + "-last", index % 4 == 0 ? 7 : 18), system).ask("visit", system);
    }

    private static void report(String what, SameAnswers same) {
        System.out.println("Phone and server, " + what + ": " + same.summary() + ".");
        assertEquals(List.of(), same.differences().stream().limit(20).toList());
        assertTrue(same.summary().length() > 0 && !same.summary().startsWith("0 words"), "nothing was compared");
    }
}
