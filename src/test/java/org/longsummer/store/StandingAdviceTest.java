package org.longsummer.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.chain.UnitAhead;
import org.longsummer.chain.outlook.LifeCurve;
import org.longsummer.chain.visit.Visit;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.PriceKey;
import org.longsummer.chain.weighing.Quote;
import org.longsummer.quantity.Money;

/** What the yard's list says of what is worth doing: in step with visits, prices, quotes and days. */
class StandingAdviceTest {
    private static final Instant NOW = Instant.parse("2031-06-10T15:00:00Z");

    @TempDir
    Path directory;
    private Store store;

    @BeforeEach
    void open() {
        store = Store.open(directory, Clock.fixed(NOW, ZoneOffset.UTC));
        List.of("u1", "u2").forEach(id -> store.units().save(Samples.unit(id)));
        store.judging().save(Samples.entry("v1", "u1", "2031-06-10T14:00:00Z"));
    }

    @AfterEach
    void close() {
        store.close();
    }

    private Optional<Advised> advised(String unitId) {
        return store.standings().ofUnit(unitId).orElseThrow().advised();
    }

    private UnitAhead ahead(String unitId) {
        FleetUnit unit = store.units().find(unitId).orElseThrow();
        return store.ahead().of(unit, store.judging().verdicts(unitId), LocalDate.of(2031, 6, 10), false);
    }

    private int adviseAll() {
        int advised = 0;
        for (int some = store.judging().adviseAgain(); some > 0; some = store.judging().adviseAgain()) {
            advised += some;
        }
        return advised;
    }

    @Test
    void aSavedVisitBringsTheAdviceThatTheUnitsPageGives() {
        assertEquals(Optional.of(Advised.of(ahead("u1").advice(), Optional.empty(), LocalDate.of(2031, 6, 10))), advised("u1"));
    }

    @Test
    void aUnitThatWasNeverVisitedIsAdvisedSoonAfterAndOnce() {
        assertEquals(Optional.empty(), advised("u2"));
        assertEquals(1, adviseAll());
        assertEquals(Optional.of(Advised.of(ahead("u2").advice(), Optional.empty(), LocalDate.of(2031, 6, 10))), advised("u2"));
        assertEquals(0, adviseAll());
    }

    @Test
    void otherPricesBringOtherAdviceForThoseWhomTheyConcern() {
        adviseAll();
        store.prices().change(PriceScope.unit("u2"), Map.of(PriceKey.CALL_OUT, Optional.of(1.0)));
        assertEquals(1, adviseAll());
        store.prices().change(PriceScope.depot("Ferrow Flats"), Map.of(PriceKey.CALL_OUT, Optional.of(2.0)));
        assertEquals(2, adviseAll());
        store.prices().change(PriceScope.depot("Elsewhere"), Map.of(PriceKey.CALL_OUT, Optional.of(3.0)));
        assertEquals(0, adviseAll());
        store.prices().change(PriceScope.FLEET, Map.of(PriceKey.MATERIAL_SAVING, Optional.of(4.0)));
        store.prices().chooseCurrency("NOK");
        assertEquals(2, adviseAll());
        assertEquals("NOK", advised("u1").orElseThrow().saving().currency());
        assertEquals(1, ahead("u2").prices().number(PriceKey.CALL_OUT));
        assertEquals(2, ahead("u1").prices().number(PriceKey.CALL_OUT));
        assertEquals(4, ahead("u1").prices().number(PriceKey.MATERIAL_SAVING));
    }

    @Test
    void aQuoteInHandCountsAndOneInAnotherCurrencyDoesNot() {
        adviseAll();
        Quote quote = new Quote(Work.UNIT_REPLACED, Money.of(1, "USD"));
        store.quotes().take("u1", new Quotes.InHand(quote, "", Optional.empty()));
        assertEquals(Optional.of(quote), ahead("u1").weighing().circumstances().quote());
        assertEquals(1, adviseAll());
        store.prices().chooseCurrency("NOK");
        assertEquals(Optional.empty(), ahead("u1").weighing().circumstances().quote());
    }

    @Test
    void adviceOfLastWeekIsWorkedOutAgain() {
        adviseAll();
        store.close();
        store = Store.open(directory, Clock.fixed(Instant.parse("2031-06-18T15:00:00Z"), ZoneOffset.UTC));
        assertEquals(2, adviseAll());
        assertEquals(LocalDate.of(2031, 6, 18), advised("u1").orElseThrow().on());
    }

    /** Ten ended lives carry a curve of the fleet's own; nine do not, and ages that the user gave come first. */
    @Test
    void theFleetsOwnLivesTeachTheLifeCurve() {
        for (int i = 0; i < 10; i++) {
            store.units().save(Samples.unit("old" + i));
            store.judging().save(Samples.entry("first" + i, "old" + i, "2027-06-0" + (i % 9 + 1) + "T14:00:00Z"));
        }
        assertEquals(LifeCurve.Origin.PRIVATE_DEFAULT, ahead("u1").life().origin());
        for (int i = 0; i < 10; i++) {
            store.judging().save(replaced("last" + i, "old" + i, "203" + i % 2 + "-05-0" + (i % 9 + 1) + "T14:00:00Z"));
        }
        store.close();
        store = Store.open(directory, Clock.fixed(NOW, ZoneOffset.UTC));
        LifeCurve learned = ahead("u1").life();
        assertEquals(LifeCurve.Origin.OWN_FLEET, learned.origin());
        assertEquals(10, learned.failures());
        assertTrue(learned.years().median() > 8 && learned.years().median() < 15, "they lived eleven and twelve years: " + learned);
        store.prices().change(PriceScope.FLEET, Map.of(PriceKey.LIFE_EARLY, Optional.of(6.0)));
        assertEquals(LifeCurve.Origin.USER, ahead("u1").life().origin());
    }

    private static Entry replaced(String id, String unitId, String moment) {
        Entry entry = Samples.entry(id, unitId, moment);
        Visit visit = entry.visit();
        return new Entry(new Visit(id, unitId, visit.at(), visit.offset(), visit.technician(), visit.instruments(), visit.readings(),
                visit.fanSpeed(), visit.powerSource(), visit.filter(), visit.coil(), visit.icedCoil(), Set.of(Work.UNIT_REPLACED), ""),
                entry.typed(), entry.savedBy(), Optional.empty());
    }
}
