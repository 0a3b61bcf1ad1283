package org.longsummer.store;

import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.longsummer.store.Business.Picture;

/** The one business whose fleet this is, or that looks after it. */
public final class TheBusiness {
    private final Jdbi reader;
    private final Jdbi writer;

    TheBusiness(Jdbi reader, Jdbi writer) {
        this.reader = reader;
        this.writer = writer;
    }

    public Business read() {
        return reader.withHandle(TheBusiness::read);
    }

    static Business read(Handle handle) {
        return handle.createQuery("select name, address, telephone, licence_number, logo_type, logo from business")
                .map((row, context) -> new Business(row.getString("name"), row.getString("address"), row.getString("telephone"),
                        row.getString("licence_number"),
                        Column.text(row, "logo_type").isPresent() ? java.util.Optional.of(new Picture(row.getString("logo_type"), row.getBytes("logo")))
                                : java.util.Optional.empty())).findOne().orElse(Business.UNKNOWN);
    }

    public void write(Business business) {
        writer.useTransaction(handle -> write(handle, business));
    }

    static void write(Handle handle, Business business) {
        handle.createUpdate("""
                insert or replace into business (id, name, address, telephone, licence_number, logo_type, logo)
                values (1, :name, :address, :telephone, :licence, :type, :logo)""")
                .bind("name", business.name()).bind("address", business.address()).bind("telephone", business.telephone())
                .bind("licence", business.licenceNumber()).bind("type", business.logo().map(Picture::contentType).orElse(null))
                .bind("logo", business.logo().map(Picture::bytes).orElse(null)).execute();
    }
}
