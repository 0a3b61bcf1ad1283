package org.longsummer.web;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.longsummer.access.Person;
import org.longsummer.store.Depot;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Store;
import org.longsummer.store.UnitChange.Because;
import org.longsummer.wire.Boxes;

/** Who changes something, when it happened and why: the boxes {@code by}, {@code happened_on} and {@code reason} of a form. */
final class BecauseForm {
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_REASON = 4000;

    private BecauseForm() {}

    /** By whom (whoever is signed in, else who is named) and why; the day is today at the unit's depot where none was given. What is wrong is noted in the boxes. */
    static Because of(Context request, Boxes boxes, Store store, FleetUnit unit, boolean needsReason) {
        return of(request, boxes, today(store, unit.unit().site()), needsReason);
    }

    static Because of(Context request, Boxes boxes, LocalDate today, boolean needsReason) {
        String by = Asking.of(request).person().map(Person::name).orElseGet(() -> boxes.text("by", LONGEST_NAME));
        if (by.isEmpty()) {
            boxes.refuse("by", "A change needs a name.", "Say who you are.");
        }
        String reason = boxes.text("reason", LONGEST_REASON);
        if (needsReason && reason.isEmpty()) {
            boxes.refuse("reason", "This needs its reason.", "Say in a few words why.");
        }
        Optional<LocalDate> on = boxes.day("happened_on");
        if (on.filter(day -> day.isAfter(today) || day.getYear() < 1970).isPresent()) {
            boxes.refuse("happened_on", "The day lies between 1970 and today.", "Check day and year.");
        }
        return new Because(by, on.orElse(today), reason);
    }

    /** Today on the depot's clock; in UTC where its time zone is not known. */
    static LocalDate today(Store store, String depot) {
        ZoneId zone = store.depots().named(depot).flatMap(Depot::timeZone).orElse(ZoneOffset.UTC);
        return today(store.clock(), zone);
    }

    static LocalDate today(Clock clock, ZoneId zone) {
        return LocalDate.ofInstant(clock.instant(), zone);
    }
}
