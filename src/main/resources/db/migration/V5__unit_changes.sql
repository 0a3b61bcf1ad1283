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
