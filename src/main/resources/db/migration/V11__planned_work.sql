-- Work that is planned for a unit: works with spaces between, by when, and its price all-in in minor units of its currency, where known.
-- It ends as done or dropped and stays as a row.
create table planned_work (
    id text primary key,
    unit_id text not null references unit (id),
    works text not null,
    planned_for text not null,
    price_minor bigint,
    currency text,
    note text not null,
    planned_by text not null,
    planned_at_ms bigint not null,
    ended_as text,
    ended_by text,
    ended_at_ms bigint
);
create index planned_work_by_unit on planned_work (unit_id, planned_for);
create index planned_work_by_day on planned_work (planned_for, unit_id);
