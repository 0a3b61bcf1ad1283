package org.longsummer.store;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.access.Reach;
import org.longsummer.chain.Assessment;
import org.longsummer.chain.UnitAhead;
import org.longsummer.chain.learning.Closings;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.PlannedSaving;
import org.longsummer.chain.weighing.PriceList;
import org.longsummer.quantity.Money;

/**
 * What planned works cost and are expected to save. What was worked out for a plan is kept for as long as nothing differs that it rests
 * on: a list of hundreds of plans changes by a few of them between two looks.
 */
public final class PlannedSavings {
    private static final int MOST_KEPT = 5_000;
    private static final int UNITS_AT_ONCE = 500;
    private static final String VERSIONS = """
            select v.unit_id, count(*) as visits, max(v.received_at_ms) as received, count(w.visit_id) as withdrawn from visit v
            left join withdrawal w on w.visit_id = v.id where v.unit_id in (<units>) group by v.unit_id""";

    private final Jdbi reader;
    private final LearnedLevels learned;
    private final LookingAhead ahead;
    private final Clock clock;
    private final Map<Question, PlannedSaving> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Question, PlannedSaving> eldest) {
            return size() > MOST_KEPT;
        }
    };

    PlannedSavings(Jdbi reader, LearnedLevels learned, LookingAhead ahead, Clock clock) {
        this.reader = reader;
        this.learned = learned;
        this.ahead = ahead;
        this.clock = clock;
    }

    /**
     * A plan with its unit and what it is expected to save.
     *
     * @param sameCurrency it was priced in the fleet's currency, or not at all: only then its price counts
     */
    public record Expected(PlannedWork plan, FleetUnit unit, boolean sameCurrency, PlannedSaving saving) {}

    /** All that a saving rests on. */
    private record Question(List<Work> works, Optional<Money> agreed, FleetUnit unit, Record record, Closings closings, PriceList prices,
            Optional<Quotes.InHand> quote, LocalDate today) {}

    /** How far a unit's record, which only grows, has grown. */
    private record Record(int visits, long lastReceivedMs, int withdrawn) {
        static final Record EMPTY = new Record(0, 0, 0);
    }

    /** The expected savings of some plans, in their order, those whose units are wanted. */
    public List<Expected> of(List<PlannedWork> plans, Predicate<FleetUnit> wanted) {
        return reader.inTransaction(handle -> {
            Map<String, FleetUnit> units = units(handle, plans.stream().map(PlannedWork::unitId).distinct().toList(), wanted);
            Looking looking = new Looking(handle, List.copyOf(units.keySet()));
            List<Expected> expected = new ArrayList<>();
            for (PlannedWork plan : plans) {
                FleetUnit unit = units.get(plan.unitId());
                if (unit != null) {
                    expected.add(looking.at(plan, unit));
                }
            }
            return expected;
        });
    }

    private static Map<String, FleetUnit> units(Handle handle, List<String> ids, Predicate<FleetUnit> wanted) {
        Map<String, FleetUnit> units = new LinkedHashMap<>();
        for (List<String> some : Parts.of(ids, UNITS_AT_ONCE)) {
            Units.among(handle, some).stream().filter(wanted).forEach(unit -> units.put(unit.id(), unit));
        }
        return units;
    }

    /** One look at many plans: what they share is read once. */
    private final class Looking {
        private final Handle handle;
        private final PriceTable prices;
        private final String currency;
        private final Closings closings;
        private final Map<String, ZoneId> zones = new HashMap<>();
        private final Map<String, Quotes.InHand> quotes = new HashMap<>();
        private final Map<String, Record> records = new HashMap<>();
        private final Map<String, PriceList> lists = new HashMap<>();

        Looking(Handle handle, List<String> unitIds) {
            this.handle = handle;
            this.prices = PriceTable.read(handle);
            this.currency = Prices.currency(handle);
            this.closings = learned.known(handle).closings();
            Depots.all(handle, Reach.EVERYWHERE).forEach(depot -> depot.timeZone().ifPresent(zone -> zones.put(depot.name(), zone)));
            for (List<String> some : Parts.of(unitIds, UNITS_AT_ONCE)) {
                quotes.putAll(Quotes.of(handle, some));
                handle.createQuery(VERSIONS).bindList("units", some).map((row, context) -> Map.entry(row.getString("unit_id"),
                        new Record(row.getInt("visits"), row.getLong("received"), row.getInt("withdrawn"))))
                        .forEach(record -> records.put(record.getKey(), record.getValue()));
            }
        }

        Expected at(PlannedWork plan, FleetUnit unit) {
            boolean sameCurrency = plan.price().filter(price -> !price.currency().equals(currency)).isEmpty();
            LocalDate today = LocalDate.ofInstant(clock.instant(), zones.getOrDefault(unit.unit().site(), ZoneOffset.UTC));
            Question question = new Question(plan.works(), sameCurrency ? plan.price() : Optional.empty(), unit,
                    records.getOrDefault(unit.id(), Record.EMPTY), closings, lists.computeIfAbsent(unit.id(), id -> prices.of(unit)),
                    Optional.ofNullable(quotes.get(unit.id())), today);
            PlannedSaving known = remembered(question);
            PlannedSaving saving = known != null ? known : workedOut(question);
            return new Expected(plan, unit, sameCurrency, saving);
        }

        private PlannedSaving workedOut(Question question) {
            List<Visit> visits = Visits.current(handle, question.unit.id());
            UnitAhead looked = ahead.of(question.unit, Assessment.briefly(question.unit.unit(), visits, closings), question.today,
                    question.prices, question.quote, handle, false);
            PlannedSaving saving = looked.planned(question.works, question.agreed);
            synchronized (kept) {
                kept.put(question, saving);
            }
            return saving;
        }
    }

    private PlannedSaving remembered(Question question) {
        synchronized (kept) {
            return kept.get(question);
        }
    }
}
