-- People, how they show who they are, and the journal of what was changed. Secrets are kept as hashes: _hash columns hold an Argon2id
-- hash of a password, or the SHA-256 hash of 256 random bits. Lists of depots stand one name a line; null means all depots.

-- A person is never removed, only closed. name_key is the name without case and repeated blanks.
create table person (
    id text primary key,
    name text not null,
    name_key text not null unique,
    role text not null,
    depots text,
    password_hash text,
    active integer not null
);

-- A browser's session, or the key that a phone keeps (kind: browser, phone).
create table session (
    id text primary key,
    secret_hash text not null unique,
    person_id text not null references person (id),
    kind text not null,
    label text not null,
    began_at_ms bigint not null,
    used_at_ms bigint not null
);
create index session_by_person on session (person_id);

-- A program's key: the most that it may do, and within which of its owner's depots.
create table program (
    id text primary key,
    secret_hash text not null unique,
    person_id text not null references person (id),
    name text not null,
    most text not null,
    depots text,
    made_at_ms bigint not null,
    ends_at_ms bigint not null,
    used_at_ms bigint
);
create index program_by_person on program (person_id);

-- A link by which a person chooses a password, once.
create table invitation (
    secret_hash text primary key,
    person_id text not null references person (id),
    ends_at_ms bigint not null
);
create index invitation_by_person on invitation (person_id);

-- A link by which an owner sees one unit's sheet; it stays as a row when it is withdrawn.
create table sheet_link (
    id text primary key,
    secret_hash text not null unique,
    unit_id text not null references unit (id),
    made_by text not null,
    made_at_ms bigint not null,
    ends_at_ms bigint not null,
    withdrawn_at_ms bigint
);
create index sheet_link_by_unit on sheet_link (unit_id);

-- Who is changing something now. Filled at the beginning of a transaction and emptied at its end, so that outside of one it is empty.
create table acting (
    one integer primary key check (one = 1),
    at_ms bigint not null,
    who text not null,
    person_id text,
    way text not null
);

-- Append-only. What was changed: written by triggers on every table that is neither append-only itself nor derived, in the
-- transaction that changes it; and sign-ins, written by the program. before and after hold the columns that differ, as JSON.
create table journal (
    id integer primary key,
    at_ms bigint not null,
    who text not null,
    person_id text,
    way text not null,
    about text not null,
    about_id text not null,
    unit_id text,
    event text not null,
    before_json text,
    after_json text
);
create index journal_by_unit on journal (unit_id, id);
create index journal_by_about on journal (about, about_id, id);
