package org.longsummer.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.longsummer.access.Person;
import org.longsummer.store.Photo;
import org.longsummer.store.Photos;
import org.longsummer.store.Store;
import org.longsummer.wire.Boxes;
import org.longsummer.wire.Problem;

/** Photos of visits: in, out, and taken out. */
final class PhotoApi {
    static final int MOST_BYTES = 2_000_000;

    private final Store store;

    PhotoApi(Store store) {
        this.store = store;
    }

    /** Who takes a photo out and why. */
    record RemovalForm(String by, String reason) {}

    /** The body is the picture; {@code id}, {@code subject} and {@code by} are in the query. */
    void add(Context request) throws IOException {
        String visitId = request.pathParam("visit");
        String id = Reader.text(request, "id").orElse("");
        if (!id.matches("[A-Za-z0-9_-]{1,64}")) {
            throw new Refused(422, List.of(new Problem("id", id, "A photo needs an id of letters and digits, made by whoever sends it.",
                    "Make one and send it again with the same id if the answer does not arrive.")));
        }
        Photo.Subject subject = subject(Reader.text(request, "subject").orElse("other"));
        byte[] bytes = Pictures.read(request.bodyInputStream(), MOST_BYTES, "photo");
        Photos.Adding outcome = store.photos().add(id, visitId, subject, Pictures.contentType(bytes).orElseThrow(), bytes,
                Asking.of(request).person().map(Person::name).or(() -> Reader.text(request, "by")).orElse(""));
        switch (outcome) {
            case STORED -> request.status(201);
            case ALREADY_STORED -> request.status(200);
            case UNKNOWN_VISIT -> throw Refused.unknown("visit", visitId, "There is no visit of this id.");
            case TOO_MANY -> throw Refused.conflict("photo", "", "A visit keeps at most " + Photos.MOST + " photos.", "Choose the telling ones.");
        }
        request.json(PhotoView.of(store.photos().find(id).orElseThrow()));
    }

    private static Photo.Subject subject(String word) {
        for (Photo.Subject subject : Photo.Subject.values()) {
            if (subject.name().toLowerCase(Locale.ROOT).equals(word)) {
                return subject;
            }
        }
        throw new Refused(422, List.of(new Problem("subject", word, "One of plate, coil, other.", "Leave it out for other.")));
    }

    /** A photo never changes under its id, so a browser may keep it. */
    void show(Context request) {
        String id = request.pathParam("photo");
        byte[] bytes = store.photos().bytes(id).orElseThrow(() -> Refused.unknown("photo", id, "There is no photo of this id."));
        request.header("Cache-Control", "private, max-age=31536000, immutable").header("Content-Disposition", "inline")
                .contentType(Pictures.contentType(bytes).orElse("application/octet-stream")).result(bytes);
    }

    void remove(Context request) {
        String id = request.pathParam("photo");
        RemovalForm form = Reader.body(request, RemovalForm.class);
        Boxes boxes = new Boxes(Map.of("by", form.by() == null ? "" : form.by(), "reason", form.reason() == null ? "" : form.reason()));
        var because = BecauseForm.of(request, boxes, BecauseForm.today(store, ""), true);
        Refused.ifAny(boxes.problems());
        if (!store.photos().remove(id, because.by(), because.reason())) {
            throw Refused.unknown("photo", id, "There is no photo of this id.");
        }
        request.json(PhotoView.of(store.photos().find(id).orElseThrow()));
    }
}
