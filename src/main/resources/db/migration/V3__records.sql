-- Why the next check is due, beside the day in next_due_on; a word of the list in code.
alter table standing add column next_due_reason text;
create index standing_by_due on standing (next_due_on);

-- How much units run at a depot: the season's first and last day and twelve run-hours a day, January first, with spaces between, such
-- as '04-01 10-31 0.0 0.0 0.0 2.0 4.0 7.0 9.0 9.0 6.0 2.0 0.0 0.0'; null where nobody said so.
alter table depot add column climate text;

-- Append-only. What became of a unit's own row: who, when, on which day, why, and what each field said before and says now.
create table unit_change (
    id bigint primary key,
    unit_id text not null references unit (id),
    kind text not null,
    happened_on text not null,
    recorded_at_ms bigint not null,
    recorded_by text not null,
    reason text not null,
    -- the other unit of a swap or a replacement
    other_unit_id text references unit (id),
    -- one line a field: its name, a space, its text; line breaks became spaces
    before_fields text not null,
    after_fields text not null
);
create index unit_change_by_unit on unit_change (unit_id, id);

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

-- The instruments that a technician carries: their kinds, and their standard uncertainties (columns as in instruments).
create table technician (
    name text primary key,
    thermometer_kind text not null,
    ambient_thermometer_kind text not null,
    hygrometer_kind text not null,
    clamp_kind text not null,
    voltmeter_kind text not null,
    probe_u_k double precision not null,
    ambient_probe_u_k double precision not null,
    humidity_u double precision not null,
    clamp_relative_u double precision not null,
    clamp_floor_u_a double precision not null,
    voltage_u_v double precision not null
);

-- Whose paper it is: one row at most.
create table business (
    id bigint primary key,
    name text not null,
    address text not null,
    telephone text not null,
    licence_number text not null,
    logo_type text,
    logo blob
);

