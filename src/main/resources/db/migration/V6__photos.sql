-- Photos of a visit. Their bytes may be taken out again, with who and why; the row stays.
create table photo (
    id text primary key,
    visit_id text not null references visit (id),
    subject text not null,
    content_type text not null,
    received_at_ms bigint not null,
    saved_by text not null,
    bytes blob,
    removed_by text,
    removed_at_ms bigint,
    removal_reason text
);
create index photo_by_visit on photo (visit_id);
