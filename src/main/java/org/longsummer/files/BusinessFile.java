package org.longsummer.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.longsummer.store.Business;
import org.longsummer.store.Business.Picture;

/** A {@code business.csv}: whose paper it is, with the logo as a file beside it. */
final class BusinessFile {
    static final String NAME = "business.csv";
    private static final String LOGO = "business_logo";
    private static final List<String> COLUMNS = List.of("name", "address", "telephone", "licence_number", "logo", "logo_type");

    private BusinessFile() {}

    static void write(Path directory, Business business) throws IOException {
        try (RecordWriter writer = new RecordWriter(directory.resolve(NAME), COLUMNS)) {
            writer.row(List.of(Cell.escaped(business.name()), Cell.escaped(business.address()), Cell.escaped(business.telephone()),
                    Cell.escaped(business.licenceNumber()), business.logo().isPresent() ? LOGO : "", business.logo().map(Picture::contentType).orElse("")));
        }
        if (business.logo().isPresent()) {
            Files.write(directory.resolve(LOGO), business.logo().get().bytes());
        }
    }

    static void read(Path directory, Findings findings, Consumer<Business> business) throws IOException {
        byte[] logo = Files.exists(directory.resolve(LOGO)) ? Files.readAllBytes(directory.resolve(LOGO)) : null;
        Sheet.read(directory.resolve(NAME), new Layout(COLUMNS, List.of(List.of("name"))), findings, row -> business.accept(new Business(
                row.words("name"), row.words("address"), row.words("telephone"), row.words("licence_number"),
                row.text("logo").isEmpty() || logo == null ? Optional.empty() : Optional.of(new Picture(row.text("logo_type"), logo)))));
    }
}
