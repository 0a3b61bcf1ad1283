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
