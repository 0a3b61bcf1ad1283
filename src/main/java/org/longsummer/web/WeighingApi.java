package org.longsummer.web;

import io.javalin.http.Context;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.longsummer.chain.UnitAhead;
import org.longsummer.chain.visit.Work;
import org.longsummer.chain.weighing.Quote;
import org.longsummer.quantity.Money;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Quotes;
import org.longsummer.store.Store;
import org.longsummer.wire.Boxes;

/** What lies ahead of one unit, the weighing of what to do about it, and the price in hand. */
final class WeighingApi {
    private static final int LONGEST_NAME = 120;
    private static final double LARGEST = 1e9;

    private final Store store;

    WeighingApi(Store store) {
        this.store = store;
    }

    void ahead(Context request) {
        request.json(AheadView.of(look(UnitApi.find(store, request.pathParam("unit")), false)));
    }

    void weigh(Context request) {
        FleetUnit unit = UnitApi.find(store, request.pathParam("unit"));
        boolean onSite = "yes".equals(request.queryParam("on_site"));
        request.json(WeighingView.of(unit, look(unit, onSite), store.quotes().of(unit.id())));
    }

    private UnitAhead look(FleetUnit unit, boolean onSite) {
        return store.ahead().of(unit, store.judging().briefVerdicts(unit.id()), BecauseForm.today(store, unit.unit().site()), onSite);
    }

    /** Boxes {@code work}, {@code price}, {@code offered_by}, {@code offered_on}. */
    void takeQuote(Context request) {
        FleetUnit unit = UnitApi.find(store, request.pathParam("unit"));
        Map<String, String> texts = Reader.body(request, UnitApi.Form.class).boxes();
        Boxes boxes = new Boxes(texts == null ? Map.of() : texts);
        Work work = boxes.choice("work", Work.class, null);
        if (work == null && boxes.text("work").isEmpty()) {
            boxes.refuse("work", "A price is for some work.", "Choose which.");
        }
        Optional<Money> price = money(boxes, "price", store.prices().currency());
        if (price.isEmpty() && boxes.text("price").isEmpty()) {
            boxes.refuse("price", "A quote needs its price.", "Type it, all-in.");
        }
        String by = boxes.text("offered_by", LONGEST_NAME);
        Optional<LocalDate> on = boxes.day("offered_on");
        Refused.ifAny(boxes.problems());
        store.quotes().take(unit.id(), new Quotes.InHand(new Quote(work, price.orElseThrow()), by, on));
        weigh(request);
    }

    void forgetQuote(Context request) {
        store.quotes().forget(UnitApi.find(store, request.pathParam("unit")).id());
        weigh(request);
    }

    /** An exact amount from a box: no more decimals than the currency has. */
    static Optional<Money> money(Boxes boxes, String box, String currency) {
        Optional<Double> number = boxes.largeNumber(box, 0, LARGEST, currency);
        if (number.isPresent() && !isExact(number.get(), currency)) {
            boxes.refuse(box, "An amount in " + currency + " has at most " + Money.decimals(currency) + " decimals.", "Round it.");
            return Optional.empty();
        }
        return number.map(amount -> Money.of(amount, currency));
    }

    static boolean isExact(double amount, String currency) {
        BigDecimal exact = BigDecimal.valueOf(amount);
        return exact.compareTo(exact.setScale(Money.decimals(currency), RoundingMode.DOWN)) == 0;
    }
}
