package org.longsummer.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.UnitAhead;
import org.longsummer.chain.condition.Condition;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.chain.condition.Wording;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.outlook.OutlookWording;
import org.longsummer.chain.outlook.TypicalWeather;
import org.longsummer.chain.season.SeasonClock;
import org.longsummer.chain.visit.Unit;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.weighing.OptionCost;
import org.longsummer.chain.weighing.PriceList;
import org.longsummer.chain.weighing.Weighing;
import org.longsummer.chain.weighing.WeighingWording;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import org.longsummer.files.PricesFile;
import org.longsummer.files.UnitsFile;
import org.longsummer.files.VisitsFile;
import org.longsummer.quantity.Decimal;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.wire.JudgedView;

/**
 * The four worked cases of reference/cases.md say what the program says of the demo fleet's files today.
 * {@code mvn test -Dtest=WorkedCasesTest -Dcases.write=true} writes them anew: look at what moved.
 */
class WorkedCasesTest {
    private static final Path PAGE = Project.REFERENCE.resolve("cases.md");
    private static final Path DEMO = Path.of("demo-data");

    /** A unit, and the visit from which one looks ahead. */
    private record Case(String title, String unitId, String visitId) {}

    private static final List<Case> CASES = List.of(new Case("A dirty condenser", "FF-01", "last"),
            new Case("A dying compressor, one visit before it is found dead", "LO-09", "D0376"), new Case("An old sound unit", "FF-03", "last"),
            new Case("A unit that cannot be told: no clamp meter, only a kitchen thermometer", "LO-12", "last"));

    @Test
    void theCasesAreTrue() throws IOException, FileRefused {
        String page = page();
        if (Boolean.getBoolean("cases.write")) {
            Project.write(PAGE, page);
        }
        assertEquals(Project.read(PAGE), page);
    }

    private static String page() throws IOException, FileRefused {
        Findings findings = new Findings();
        Map<String, Unit> units = new TreeMap<>();
        UnitsFile.read(DEMO.resolve("units.csv"), id -> Optional.empty(), findings).forEach((id, unit) -> units.put(id, unit.unit()));
        List<Visit> visits = new ArrayList<>();
        VisitsFile.read(DEMO.resolve("visits.csv"), units::containsKey, findings, visits::add);
        PriceList prices = PricesFile.read(DEMO.resolve("prices").resolve("rental.csv"), findings);
        findings.refuseIfAny();
        Closings closings = Assessment.learn(units, visits);
        StringBuilder page = new StringBuilder(HEAD);
        for (Case each : CASES) {
            List<Verdict> verdicts = new ArrayList<>(Assessment.ofUnit(units.get(each.unitId()),
                    visits.stream().filter(visit -> visit.unitId().equals(each.unitId())).toList(), closings));
            while (!each.visitId().equals("last") && !last(verdicts).visit().id().equals(each.visitId())) {
                verdicts.remove(verdicts.size() - 1);
            }
            write(page, each, units.get(each.unitId()), verdicts, prices);
        }
        return page.toString();
    }

    private static final String HEAD = """
            # Four worked cases of the demo fleet

            Invented readings, real sums: every number below comes from the rows of `demo-data` named with it, and `WorkedCasesTest` fails when
            one of them is no longer what the program says (`-Dcases.write=true` writes this page anew). The day is that of the visit, the
            prices are `demo-data/prices/rental.csv`, what that leaves out is a default of ours (`chain.weighing.PriceKey`).

            What is computed where: expected values `chain.expectation`, departures `chain.departure`, probabilities and severity
            `chain.condition`, dates and chances of quitting `chain.outlook`, money `chain.weighing` ([weighing.md](weighing.md) says how, and has one case
            worked twice). ± is two standard uncertainties; in the table of costs it is the spread, one standard deviation.
            """;

    private static Verdict last(List<Verdict> verdicts) {
        return verdicts.get(verdicts.size() - 1);
    }

    private static void write(StringBuilder page, Case each, Unit unit, List<Verdict> verdicts, PriceList prices) {
        Verdict verdict = last(verdicts);
        UnitAhead ahead = UnitAhead.of(unit, verdicts, verdict.visit().localDay(), new UnitAhead.Assumed(prices, SeasonClock.NORTHERN, Optional.empty(),
                Optional.empty(), false, prices.life(), TypicalWeather.faultModel(unit.altitude())));
        page.append("\n## ").append(each.title()).append("\n\n`").append(unit.id()).append("` of `units.csv`, visit `").append(verdict.visit().id())
                .append("` of `visits.csv`, ").append(verdict.visit().localDay()).append("; ").append(verdict.earlierVisits()).append(" judged visits before it")
                .append(ahead.standing().ageYears().isPresent() ? ", " + Decimal.text(ahead.standing().age(ahead.life()), 1) + " years old" : "").append(".\n\n");
        page.append("> ").append(Wording.sentence(verdict, UnitSystem.US)).append("\n\n");
        readings(page, verdict);
        conditions(page, verdict);
        ahead(page, ahead);
        costs(page, ahead);
    }

    private static void readings(StringBuilder page, Verdict verdict) {
        line(page, "Split", JudgedView.split(verdict.departure(), UnitSystem.US));
        line(page, "Amps", JudgedView.amps(verdict.departure(), UnitSystem.US));
    }

    private static void line(StringBuilder page, String name, JudgedView judged) {
        page.append("- ").append(name).append(": ").append(judged.measured().isEmpty() ? "not read" : judged.text());
        judged.departure().ifPresent(departure -> page.append("; ").append(Decimal.text(departure.percent(), 1)).append(" % beyond expected, ")
                .append(Decimal.text(departure.lowPercent(), 1)).append(" to ").append(Decimal.text(departure.highPercent(), 1)).append(" %"));
        if (!judged.budget().isEmpty() && judged.measured().isPresent()) {
            page.append("; most uncertain: ").append(judged.budget().get(0).name());
        }
        page.append(".\n");
    }

    private static void conditions(StringBuilder page, Verdict verdict) {
        page.append("- Probabilities: ");
        StringBuilder said = new StringBuilder();
        for (Condition condition : Condition.values()) {
            if (condition != Condition.NOT_COOLING && verdict.probabilities().of(condition) >= 0.005) {
                said.append(said.isEmpty() ? "" : ", ").append("`").append(condition.word()).append("` ")
                        .append(Decimal.text(verdict.probabilities().of(condition), 2));
            }
        }
        page.append(said).append("; beyond what an owner can accept now: ").append(Decimal.text(verdict.probabilityOfImpact(), 2)).append(".\n");
        Wording.cannotTell(verdict).forEach(text -> page.append("- ").append(text).append("\n"));
        verdict.nextBestReading().ifPresent(next -> page.append("- Next best reading: ").append(next.kind().phrase()).append(".\n"));
    }

    private static void ahead(StringBuilder page, UnitAhead ahead) {
        page.append("- ").append(OutlookWording.limit(ahead.outlook(), LocalDate::toString)).append("\n- ")
                .append(OutlookWording.quitting(ahead.outlook(), ahead.life(), LocalDate::toString)).append("\n\n");
    }

    private static void costs(StringBuilder page, UnitAhead ahead) {
        Weighing weighing = ahead.weighing();
        page.append("| option | now | energy | quitting | work later | afterwards | expected | cures | quits in season |\n|---|---:|---:|---:|---:|---:|---:|---:|---:|\n");
        for (OptionCost cost : weighing.options()) {
            page.append("| ").append(cost.works().isEmpty() ? "keep" : WeighingWording.works(cost.works())).append(" | ").append(cost.now().number()).append(" | ")
                    .append(cost.energy().number()).append(" | ").append(cost.breakdown().number()).append(" | ").append(cost.laterWork().number()).append(" | ")
                    .append(cost.afterwards().number()).append(" | ").append(cost.expected().number()).append(" ± ").append(Decimal.text(cost.spread().amount(), 0))
                    .append(" | ").append(Decimal.text(cost.cures(), 2)).append(" | ").append(Decimal.text(cost.quitsInSeason(), 2)).append(" |\n");
        }
        page.append("\n**").append(WeighingWording.sentence(weighing)).append("**\n");
        String settling = WeighingWording.settling(weighing);
        page.append(settling.isEmpty() ? "" : settling + "\n").append("Knowing for certain what is wrong would be worth ")
                .append(weighing.worthOfKnowing().text()).append(".\n\n");
        List<String> flips = WeighingWording.flips(ahead.flips(), ahead.prices());
        page.append(flips.isEmpty() ? "No single figure changes that within sensible limits.\n" : String.join(" ", flips) + "\n");
    }
}
