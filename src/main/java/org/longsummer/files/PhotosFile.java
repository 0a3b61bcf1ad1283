package org.longsummer.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.longsummer.access.Reach;
import org.longsummer.store.Photo;
import org.longsummer.store.Store;
import org.longsummer.store.Withdrawal;

/** A {@code photos.csv} and, in {@code photos}, the pictures under their ids. */
final class PhotosFile {
    static final String NAME = "photos.csv";
    static final String FOLDER = "photos";
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9_-]{1,64}");
    private static final List<String> COLUMNS = List.of("photo_id", "visit_id", "subject", "content_type", "received_at", "saved_by", "removed_by",
            "removed_at", "removal_reason");

    private PhotosFile() {}

    static void write(Path directory, Store store, Reach reach, Progress progress) throws IOException {
        Files.createDirectories(directory.resolve(FOLDER));
        try (RecordWriter writer = new RecordWriter(directory.resolve(NAME), COLUMNS)) {
            store.photos().forEach(photo -> {
                if (sees(store, reach, photo)) {
                    writer.row(cells(photo));
                    store.photos().bytes(photo.id()).ifPresent(bytes -> write(directory.resolve(FOLDER).resolve(photo.id()), bytes));
                    progress.step("photos written");
                }
            });
        }
    }

    private static boolean sees(Store store, Reach reach, Photo photo) {
        return reach.everywhere() || store.visits().find(photo.visitId()).flatMap(visit -> store.units().find(visit.visit().unitId()))
                .filter(unit -> reach.includes(unit.unit().site())).isPresent();
    }

    private static void write(Path file, byte[] bytes) {
        try {
            Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> cells(Photo photo) {
        Optional<Withdrawal> removal = photo.removal();
        return List.of(photo.id(), Cell.escaped(photo.visitId()), Row.word(photo.subject()), photo.contentType(), photo.receivedAt().toString(),
                Cell.escaped(photo.savedBy()), Cell.escaped(removal.map(Withdrawal::by).orElse("")), removal.map(r -> r.at().toString()).orElse(""),
                Cell.escaped(removal.map(Withdrawal::reason).orElse("")));
    }

    static void read(Path directory, Findings findings, Consumer<Photo> photos) throws IOException {
        Sheet.read(directory.resolve(NAME), new Layout(COLUMNS, List.of(List.of("photo_id"), List.of("visit_id"))), findings, row -> {
            String id = row.text("photo_id");
            if (!ID.matcher(id).matches()) {
                row.problem("photo_id", id, "write up to 64 letters and digits");
            }
            String visitId = row.required("visit_id", "name the visit");
            Photo.Subject subject = row.word("subject", Photo.Subject.class, Photo.Subject.OTHER);
            Optional<OffsetDateTime> receivedAt = row.moment("received_at");
            Optional<Withdrawal> removal = row.optionalMoment("removed_at")
                    .map(at -> new Withdrawal(row.words("removed_by"), at.toInstant(), row.words("removal_reason")));
            if (row.isSound()) {
                photos.accept(new Photo(id, visitId, subject, row.text("content_type"), receivedAt.orElseThrow().toInstant(), row.words("saved_by"),
                        removal));
            }
        });
    }

    /** The picture beside the file; empty when it was taken out. */
    static Optional<byte[]> bytes(Path directory, Photo photo) throws IOException {
        Path file = directory.resolve(FOLDER).resolve(photo.id());
        return Files.isRegularFile(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
    }
}
