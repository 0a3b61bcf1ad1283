-- Figures of price lists, only what somebody gave: of the whole fleet (scope fleet, name empty), of a depot or of a unit. A figure is a
-- key of the price list with its number in the currency's major unit, or the key currency with its three letters, for the fleet only.
create table price (
    scope text not null,
    name text not null,
    figure text not null,
    amount text not null,
    primary key (scope, name, figure)
);

-- A price in hand for one piece of work on a unit, all-in, in minor units of its currency; at most one a unit.
create table quote (
    unit_id text primary key references unit (id),
    work text not null,
    price_minor bigint not null,
    currency text not null,
    offered_by text not null,
    offered_on text
);

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

-- What is worth doing, beside what the visits say: of the day and of the prices at which it was worked out, and worked out again when
-- either is no longer true (advice_on is null then). Money in minor units of advice_currency; advice_waiting_minor is what thirty days of
-- waiting are expected to cost. Works with spaces between.
alter table standing add column advice_option text;
alter table standing add column advice_works text;
alter table standing add column advice_timing text;
alter table standing add column advice_saving_minor bigint;
alter table standing add column advice_waiting_minor bigint;
alter table standing add column advice_currency text;
alter table standing add column advice_on text;
create index standing_by_waiting on standing (in_service, advice_waiting_minor desc, unit_id);
create index standing_by_advice_day on standing (advice_on, unit_id);
