package org.longsummer.web;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longsummer.access.Reach;
import org.longsummer.chain.weighing.PriceKey;
import org.longsummer.chain.weighing.PriceList;
import org.longsummer.files.FileRefused;
import org.longsummer.files.Findings;
import org.longsummer.files.PricesFile;
import org.longsummer.quantity.Money;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.PriceScope;
import org.longsummer.store.Prices;
import org.longsummer.store.Store;
import org.longsummer.wire.Boxes;
import org.longsummer.wire.Problem;

/** Price lists of the fleet, of a depot ({@code depot=}) and of a unit ({@code unit=}): seen, changed, as a file and back. */
final class PriceApi {
    private final Store store;

    PriceApi(Store store) {
        this.store = store;
    }

    /** Whose list, and every list that counts for it from the widest to its own. */
    private record Asked(PriceScope scope, String label, String depot, List<Prices.Layer> layers) {}

    void show(Context request) {
        request.json(view(asked(request)));
    }

    void change(Context request) {
        Asked asked = asked(request);
        refuseBeyond(request, asked.scope());
        Map<String, String> texts = Reader.body(request, UnitApi.Form.class).boxes();
        Boxes boxes = new Boxes(texts == null ? Map.of() : texts);
        Optional<String> currency = boxes.text("currency").map(String::toUpperCase);
        if (currency.filter(given -> !Money.isCurrency(given)).isPresent()) {
            boxes.refuse("currency", "A currency has three letters, such as USD.", "Write its three letters.");
        }
        if (currency.filter(given -> !given.equals(store.prices().currency())).isPresent() && asked.scope() != PriceScope.FLEET) {
            boxes.refuse("currency", "All lists are in the fleet's currency, " + store.prices().currency() + ".", "Change it in the fleet's list.");
        }
        Map<PriceKey, Optional<Double>> figures = PriceForm.read(boxes, currency.filter(Money::isCurrency).orElse(store.prices().currency()));
        PriceForm.refuseContradictions(boxes, merged(asked, figures));
        Refused.ifAny(boxes.problems());
        if (asked.scope() == PriceScope.FLEET) {
            currency.filter(given -> !given.equals(store.prices().currency())).ifPresent(store.prices()::chooseCurrency);
        }
        store.prices().change(asked.scope(), figures);
        show(request);
    }

    private static PriceList merged(Asked asked, Map<PriceKey, Optional<Double>> figures) {
        PriceList list = PriceList.defaults(asked.layers().get(0).own().currency());
        for (Prices.Layer layer : asked.layers()) {
            for (PriceKey key : PriceKey.values()) {
                boolean gone = layer.scope().equals(asked.scope()) && figures.containsKey(key);
                list = layer.own().isGiven(key) && !gone ? list.with(key, layer.own().number(key)) : list;
            }
        }
        for (Map.Entry<PriceKey, Optional<Double>> figure : figures.entrySet()) {
            list = figure.getValue().isPresent() ? list.with(figure.getKey(), figure.getValue().get()) : list;
        }
        return list;
    }

    void file(Context request) {
        Asked asked = asked(request);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PricesFile.write(Prices.merged(asked.layers()), out);
        request.contentType("text/csv; charset=utf-8").header("Content-Disposition", "attachment; filename=\"prices.csv\"").result(out.toByteArray());
    }

    /** The body is the file; a figure that it does not hold stays as it is. */
    void takeFile(Context request) throws IOException {
        Asked asked = asked(request);
        refuseBeyond(request, asked.scope());
        PriceList list = read(request.bodyAsBytes());
        if (!list.currency().equals(store.prices().currency()) && asked.scope() != PriceScope.FLEET) {
            throw new Refused(422, List.of(new Problem("currency", list.currency(), "All lists are in the fleet's currency, " + store.prices().currency() + ".",
                    "Change it in the fleet's list first.")));
        }
        Map<PriceKey, Optional<Double>> figures = new EnumMap<>(PriceKey.class);
        for (PriceKey key : PriceKey.values()) {
            if (list.isGiven(key)) {
                figures.put(key, Optional.of(list.number(key)));
            }
        }
        Boxes boxes = new Boxes(Map.of());
        PriceForm.refuseContradictions(boxes, merged(asked, figures));
        Refused.ifAny(boxes.problems());
        if (asked.scope() == PriceScope.FLEET && !list.currency().equals(store.prices().currency())) {
            store.prices().chooseCurrency(list.currency());
        }
        store.prices().change(asked.scope(), figures);
        show(request);
    }

    private static PriceList read(byte[] body) throws IOException {
        Path file = Files.createTempFile("prices", ".csv");
        try {
            Files.write(file, body);
            Findings findings = new Findings();
            PriceList list = PricesFile.read(file, findings);
            findings.refuseIfAny();
            return list;
        } catch (FileRefused refused) {
            throw new Refused(422, List.of(new Problem("file", "", refused.getMessage().replace(file.toString(), "prices.csv"), "Nothing was taken in. Put it right and send it again.")));
        } finally {
            Files.delete(file);
        }
    }

    private PriceView view(Asked asked) {
        return PriceView.of(Boxes.word(asked.scope().kind()), asked.label(), asked.depot(), asked.layers());
    }

    private Asked asked(Context request) {
        Asking asking = Asking.of(request);
        Optional<String> unitId = Reader.text(request, "unit");
        Optional<String> depot = Reader.text(request, "depot");
        if (unitId.isPresent()) {
            FleetUnit unit = store.units().find(unitId.get()).filter(found -> asking.sees(found.unit().site())).orElseThrow(() -> Refused.unknown("unit", "", "There is no unit of this name."));
            return new Asked(PriceScope.unit(unit.id()), unit.unit().label(), unit.unit().site(), store.prices().layers(unit));
        }
        if (depot.isPresent()) {
            if (!asking.sees(depot.get()) || store.depots().named(depot.get()).isEmpty()) {
                throw Refused.unknown("depot", "", "There is no depot of this name.");
            }
            return new Asked(PriceScope.depot(depot.get()), depot.get(), depot.get(), store.prices().layers(depot.get()));
        }
        return new Asked(PriceScope.FLEET, "", "", List.of(new Prices.Layer(PriceScope.FLEET, store.prices().given(PriceScope.FLEET))));
    }

    private static void refuseBeyond(Context request, PriceScope scope) {
        Reach reach = Asking.of(request).reach();
        if (scope == PriceScope.FLEET && !reach.everywhere()) {
            throw new Refused(422, List.of(new Problem("", "", "The fleet's prices count for depots that you do not see.", "Change those of a depot.")));
        }
    }
}
