package org.longsummer.files;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.longsummer.access.Reach;
import org.longsummer.store.Depot;
import org.longsummer.store.PlannedWork;
import org.longsummer.store.PriceFigure;
import org.longsummer.store.PriceScope;
import org.longsummer.store.Store;

/** What is small enough to be held while the rest is read: depots, figures of price lists, planned work. */
record SmallFiles(List<Depot> depots, List<PriceFigure> prices, List<PlannedWork> plans) {

    /** Hands over a row that can be read. */
    interface Taker {
        void depot(Depot depot, long row);

        void price(PriceFigure figure, long row);

        void plan(PlannedWork plan, long row);
    }

    static SmallFiles read(Store store, Reach reach, FleetFiles files, Predicate<String> isKnown, String by, Findings findings) throws IOException {
        SmallFiles all = new SmallFiles(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        read(store, reach, files, isKnown, by, findings, new Taker() {
            @Override
            public void depot(Depot depot, long row) {
                all.depots.add(depot);
            }

            @Override
            public void price(PriceFigure figure, long row) {
                all.prices.add(figure);
            }

            @Override
            public void plan(PlannedWork plan, long row) {
                all.plans.add(plan);
            }
        });
        return all;
    }

    /** Reads them row by row; what lies beyond somebody's reach is refused. */
    static void read(Store store, Reach reach, FleetFiles files, Predicate<String> isKnown, String by, Findings findings, Taker taker)
            throws IOException {
        if (files.of(FileKind.DEPOTS).isPresent()) {
            String name = String.valueOf(files.of(FileKind.DEPOTS).get().getFileName());
            DepotsFile.read(files.of(FileKind.DEPOTS).get(), store.depots()::named, findings, (depot, row) -> {
                if (reach.includes(depot.name())) {
                    taker.depot(depot, row);
                } else {
                    findings.add(new Problem(name, row, "site", depot.name(), "this is no depot of yours; name one of " + String.join(", ", reach.depots())));
                }
            });
        }
        String[] currency = {store.prices().currency()};
        if (files.of(FileKind.PRICES).isPresent()) {
            String name = String.valueOf(files.of(FileKind.PRICES).get().getFileName());
            PriceRowsFile.read(files.of(FileKind.PRICES).get(), findings, (figure, row) -> {
                if (isWithin(reach, figure.scope(), isKnown)) {
                    currency[0] = figure.key().equals(PriceFigure.CURRENCY) ? figure.amount() : currency[0];
                    taker.price(figure, row);
                } else {
                    findings.add(new Problem(name, row, "name", figure.scope().name(), figure.scope().kind() == PriceScope.Kind.UNIT
                            ? "no unit has this id; add it to the units or correct it here"
                            : "these prices are not yours to set; leave the row out, or ask somebody who looks after the whole fleet"));
                }
            });
        }
        if (files.of(FileKind.WORK).isPresent()) {
            new PlansFile(isKnown, store.plans()::find, by, store.clock().instant(), currency[0])
                    .read(files.of(FileKind.WORK).get(), findings, taker::plan);
        }
    }

    private static boolean isWithin(Reach reach, PriceScope scope, Predicate<String> isKnown) {
        return switch (scope.kind()) {
            case FLEET -> reach.everywhere();
            case DEPOT -> reach.includes(scope.name());
            case UNIT -> isKnown.test(scope.name());
        };
    }
}
