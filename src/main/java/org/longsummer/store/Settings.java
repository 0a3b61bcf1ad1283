package org.longsummer.store;

import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The store's notes about itself. */
final class Settings {
    static final String DEMO = "demo";
    static final String GENERATION = "generation";
    static final String CLOSED_THROUGH = "closed_through";

    private Settings() {}

    static Optional<String> read(Handle handle, String name) {
        return handle.createQuery("select content from setting where name = :name").bind("name", name).mapTo(String.class).findOne();
    }

    static void write(Handle handle, String name, String content) {
        handle.createUpdate("""
                insert into setting (name, content) values (:name, :content)
                on conflict (name) do update set content = excluded.content""")
                .bind("name", name).bind("content", content).execute();
    }

    static void remove(Handle handle, String name) {
        handle.createUpdate("delete from setting where name = :name").bind("name", name).execute();
    }
}
