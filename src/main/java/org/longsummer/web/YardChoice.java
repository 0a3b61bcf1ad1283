package org.longsummer.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.longsummer.access.Reach;
import org.longsummer.store.Standing;
import org.longsummer.store.Store;
import org.longsummer.web.YardQuestion.Understood;
import org.longsummer.wire.Problem;

/** Units that somebody chose in the yard: ticked one by one, or all that a filter lets through. */
final class YardChoice {
    /** Of ticked ones; a filter takes any number. */
    private static final int MOST_TICKED = 2_000;

    private final Store store;
    private final List<String> units;
    private final Optional<Understood> asked;
    private final Reach reach;

    private YardChoice(Store store, List<String> units, Optional<Understood> asked, Reach reach) {
        this.store = store;
        this.units = units;
        this.asked = asked;
        this.reach = reach;
    }

    /**
     * What is chosen: either the units' ids, or a filter by the names of its parts with the number of units that were seen under it.
     *
     * @param units ids
     * @param filter texts by the parts of the yard's address
     * @param expected how many units the filter let through when they were chosen
     */
    record Form(List<String> units, Map<String, String> filter, Integer expected) {}

    static YardChoice of(Context request, Store store, LocalDate today) {
        return of(Reader.body(request, Form.class), Asking.of(request), store, today);
    }

    /** @throws Refused when nothing is chosen, too much is ticked, or another number of units fits the filter by now */
    static YardChoice of(Form form, Asking asking, Store store, LocalDate today) {
        if (form.filter() != null) {
            Understood asked = YardQuestion.of(form.filter()::get, asking.yard(), today);
            int found = store.standings().count(asked.filter());
            if (form.expected() != null && form.expected() != found) {
                throw Refused.conflict("expected", form.expected().toString(), found + " units fit this filter by now.",
                        "Look at the list again, then choose again.");
            }
            return new YardChoice(store, List.of(), Optional.of(asked), asking.reach());
        }
        List<String> units = form.units() == null ? List.of() : form.units();
        if (units.isEmpty() || units.size() > MOST_TICKED) {
            throw new Refused(422, List.of(new Problem("units", String.valueOf(units.size()), "1 to " + MOST_TICKED + " units.",
                    units.isEmpty() ? "Tick units in the yard." : "Choose all that fit a filter instead.")));
        }
        return new YardChoice(store, units, Optional.empty(), asking.reach());
    }

    int count() {
        return asked.map(question -> store.standings().count(question.filter())).orElse(units.size());
    }

    /** Hands over those that are there and that he sees, some at a time; ticked ones in the order in which they were given. */
    void forEach(Consumer<Standing> consumer) {
        if (asked.isPresent()) {
            store.standings().forEach(asked.get().filter(), asked.get().order(), consumer);
        } else {
            store.standings().ofUnits(units, reach).forEach(consumer);
        }
    }
}
