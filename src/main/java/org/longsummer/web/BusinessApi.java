package org.longsummer.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.longsummer.store.Business;
import org.longsummer.store.Business.Picture;
import org.longsummer.store.Store;
import org.longsummer.wire.Boxes;

/** Whose paper it is: name, address, telephone, licence number and logo, for all that is printed. */
final class BusinessApi {
    private static final int LONGEST = 120;
    private static final int LONGEST_ADDRESS = 500;
    private static final int MOST_BYTES = 500_000;

    private final Store store;

    BusinessApi(Store store) {
        this.store = store;
    }

    /**
     * What is printed.
     *
     * @param logo address of the logo's picture; absent when there is none
     */
    record BusinessView(String name, String address, String telephone, String licenceNumber, Optional<String> logo) {
        static BusinessView of(Business business) {
            return new BusinessView(business.name(), business.address(), business.telephone(), business.licenceNumber(),
                    business.logo().map(logo -> "../api/business/logo?" + Integer.toHexString(java.util.Arrays.hashCode(logo.bytes()))));
        }
    }

    void show(Context request) {
        request.json(BusinessView.of(store.business().read()));
    }

    void save(Context request) {
        Map<String, String> texts = Reader.body(request, UnitApi.Form.class).boxes();
        Boxes boxes = new Boxes(texts == null ? Map.of() : texts);
        Business business = new Business(boxes.text("name", LONGEST), boxes.text("address", LONGEST_ADDRESS), boxes.text("telephone", LONGEST),
                boxes.text("licence_number", LONGEST), store.business().read().logo());
        Refused.ifAny(boxes.problems());
        store.business().write(business);
        show(request);
    }

    void showLogo(Context request) {
        Picture logo = store.business().read().logo().orElseThrow(() -> Refused.unknown("logo", "", "There is no logo."));
        request.header("Cache-Control", "private, max-age=86400").header("Content-Disposition", "inline").contentType(logo.contentType())
                .result(logo.bytes());
    }

    /** The body is the picture. */
    void saveLogo(Context request) throws IOException {
        byte[] bytes = Pictures.read(request.bodyInputStream(), MOST_BYTES, "logo");
        setLogo(Optional.of(new Picture(Pictures.contentType(bytes).orElseThrow(), bytes)));
        show(request);
    }

    void removeLogo(Context request) {
        setLogo(Optional.empty());
        show(request);
    }

    private void setLogo(Optional<Picture> logo) {
        Business business = store.business().read();
        store.business().write(new Business(business.name(), business.address(), business.telephone(), business.licenceNumber(), logo));
    }
}
