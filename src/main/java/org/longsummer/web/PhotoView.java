package org.longsummer.web;

import java.util.Optional;
import org.longsummer.store.Photo;
import org.longsummer.wire.Boxes;

/**
 * A photo as a page shows it; its bytes are at {@code /api/photos/{id}}.
 *
 * @param id its identifier
 * @param visitId its visit
 * @param subject plate, coil or other
 * @param by who handed it over
 * @param removal set when it was taken out
 */
record PhotoView(String id, String visitId, String subject, String by, Optional<Removal> removal) {

    /** Who took it out, when (UTC) and why. */
    record Removal(String by, String at, String reason) {}

    static PhotoView of(Photo photo) {
        return new PhotoView(photo.id(), photo.visitId(), Boxes.word(photo.subject()), photo.savedBy(),
                photo.removal().map(removal -> new Removal(removal.by(), removal.at().toString(), removal.reason())));
    }
}
