-- What the yard is filtered by, beside what it lists. pressing is smallest for the most pressing unit; filters for look-alikes (o and 0,
-- i and 1, s and 5) are folded in search_text. Days that are null are not known.
alter table standing add column duty text not null default 'in_service';
alter table standing add column installed_on text;
alter table standing add column warranty_until text;
-- The opening of the season for which the unit's next check is due, whatever else asks for one earlier.
alter table standing add column season_due_on text;
-- The last day on which the filter has not yet run for longer than its interval.
alter table standing add column filter_due_on text;
-- The first day for which work is planned that is still to be done.
alter table standing add column planned_for text;
alter table standing add column pressing double precision not null default -2.0;
-- Smallest for the unit whose waiting costs most: what it costs, negative, in minor units; among equal ones the most pressing.
alter table standing add column dearest double precision not null default -0.002;
-- Moment of the last visit; 0 when there is none.
alter table standing add column last_seen_ms bigint not null default 0;

update standing set search_text = replace(replace(replace(search_text, 'o', '0'), 'i', '1'), 's', '5'),
    pressing = -(state_rank * 2.0 + p_impact),
    dearest = -(state_rank * 2.0 + p_impact) / 1000.0 - coalesce(advice_waiting_minor, 0), last_seen_ms = coalesce(last_visit_at_ms, 0),
    duty = (select u.duty from unit u where u.id = unit_id),
    installed_on = (select u.installed_on from unit u where u.id = unit_id),
    warranty_until = (select u.warranty_until from unit u where u.id = unit_id),
    planned_for = (select min(p.planned_for) from planned_work p where p.unit_id = standing.unit_id and p.ended_as is null),
    season_due_on = case when next_due_reason = 'season' then next_due_on end,
    filter_due_on = case when next_due_reason = 'filter_age' then next_due_on end;

drop index standing_by_urgency;
drop index standing_by_depot;
drop index standing_by_last_visit;
drop index standing_by_label;
drop index standing_by_due;
drop index standing_by_waiting;
-- All that the yard filters by, in its order, so that a filter with few units reads such an index and no rows.
create index standing_by_dearest on standing (in_service, dearest, unit_id, depot, state, condition, since, last_to_retake, visit_count,
    next_due_on, season_due_on, filter_due_on, warranty_until, planned_for, last_seen_ms, installed_on, duty);
create index standing_by_pressing on standing (in_service, pressing, unit_id, depot, state, condition, since, last_to_retake, visit_count,
    next_due_on, season_due_on, filter_due_on, warranty_until, planned_for, last_seen_ms, installed_on, duty);
create index standing_by_depot on standing (depot, in_service, dearest, unit_id);
create index standing_by_last_visit on standing (in_service, last_seen_ms, unit_id);
create index standing_by_label on standing (in_service, label, unit_id);

create trigger standing_planned_added after insert on planned_work begin
    update standing set planned_for = (select min(p.planned_for) from planned_work p where p.unit_id = new.unit_id and p.ended_as is null)
    where unit_id = new.unit_id;
end;
create trigger standing_planned_changed after update on planned_work begin
    update standing set planned_for = (select min(p.planned_for) from planned_work p where p.unit_id = new.unit_id and p.ended_as is null)
    where unit_id = new.unit_id;
end;
create trigger standing_planned_removed after delete on planned_work begin
    update standing set planned_for = (select min(p.planned_for) from planned_work p where p.unit_id = old.unit_id and p.ended_as is null)
    where unit_id = old.unit_id;
end;

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

-- The units that were ever to be acted on, for the fleet's history.
create index verdict_of_acts on verdict (unit_id) where state = 'act';
