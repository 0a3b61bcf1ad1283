-- Where a vehicle stands at its depot, by its unit: the row and the place in it, in the depot's own words. Nothing where nobody said so.
create table stand (
    unit_id text primary key references unit (id),
    stand_row text not null,
    stand_place text not null
);

-- A list of units to visit on a day, in walking order. Each stop has the id that its visit will have, so that a sheet that is typed in
-- twice is stored once.
create table visit_round (
    id text primary key,
    title text not null,
    for_day text not null,
    made_by text not null,
    made_at_ms bigint not null
);
create index visit_round_by_day on visit_round (for_day);
create table visit_round_stop (
    round_id text not null references visit_round (id),
    unit_id text not null references unit (id),
    position integer not null,
    visit_id text not null unique,
    primary key (round_id, unit_id)
);
create index visit_round_stop_by_unit on visit_round_stop (unit_id);
