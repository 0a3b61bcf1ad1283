-- A price in hand for one piece of work on a unit, all-in, in minor units of its currency; at most one a unit.
create table quote (
    unit_id text primary key references unit (id),
    work text not null,
    price_minor bigint not null,
    currency text not null,
    offered_by text not null,
    offered_on text
);
