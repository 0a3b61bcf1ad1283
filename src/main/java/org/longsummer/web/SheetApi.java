package org.longsummer.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.longsummer.chain.condition.Verdict;
import org.longsummer.paper.OwnersSheet;
import org.longsummer.paper.SheetPdf;
import org.longsummer.quantity.UnitSystem;
import org.longsummer.store.Business;
import org.longsummer.store.FleetUnit;
import org.longsummer.store.Store;

/** The owner's sheet, as a page and as a PDF: for those who see the unit, and for whoever holds its link. */
final class SheetApi {
    private final Store store;

    SheetApi(Store store) {
        this.store = store;
    }

    /**
     * A sheet with all that a page needs to show it.
     *
     * @param unitId the unit
     * @param label what people call it
     * @param sheet what it says
     * @param adviceOnly stands at its foot
     * @param business whose paper it is, without the address of its logo
     * @param logo the logo itself, as a data address; absent when there is none
     * @param printed today at the unit's depot
     * @param demo it is of the invented demo fleet
     */
    record SheetView(String unitId, String label, OwnersSheet sheet, String adviceOnly, BusinessApi.BusinessView business, Optional<String> logo,
            String printed, boolean demo) {}

    void show(Context request) {
        request.json(view(UnitApi.find(store, request.pathParam("unit")), Reader.system(request)));
    }

    void pdf(Context request) {
        pdf(request, UnitApi.find(store, request.pathParam("unit")));
    }

    /** The sheet of the link with which somebody asks: {@code Authorization: Sheet KEY}. */
    void open(Context request) {
        request.json(view(linked(request), Reader.system(request)));
    }

    void openPdf(Context request) {
        pdf(request, linked(request));
    }

    private FleetUnit linked(Context request) {
        return UnitApi.find(store, Asking.of(request).sheetUnit().orElseThrow(() -> Refused.unknown("", "", "This address is opened by an owner's link.")));
    }

    private SheetView view(FleetUnit unit, UnitSystem system) {
        Business business = store.business().read();
        return new SheetView(unit.id(), unit.unit().label(), sheet(unit, system), OwnersSheet.ADVICE_ONLY,
                BusinessApi.BusinessView.of(new Business(business.name(), business.address(), business.telephone(), business.licenceNumber(), Optional.empty())),
                business.logo().map(logo -> "data:" + logo.contentType() + ";base64," + Base64.getEncoder().encodeToString(logo.bytes())),
                today(unit).toString(), store.demo().isThere());
    }

    private void pdf(Context request, FleetUnit unit) {
        UnitSystem system = Reader.system(request);
        byte[] bytes = SheetPdf.of(sheet(unit, system), store.business().read(), today(unit), system == UnitSystem.US, store.demo().isThere());
        request.contentType("application/pdf").header("Content-Disposition", "inline; filename=\"owners-sheet.pdf\"").result(bytes);
    }

    private OwnersSheet sheet(FleetUnit unit, UnitSystem system) {
        List<Verdict> verdicts = store.judging().verdicts(unit.id());
        return OwnersSheet.of(unit, verdicts, store.ahead().of(unit, verdicts, today(unit), false), system);
    }

    private LocalDate today(FleetUnit unit) {
        return BecauseForm.today(store, unit.unit().site());
    }
}
