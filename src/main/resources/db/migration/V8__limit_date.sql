-- The day by which what is wrong with a unit takes it below the limit, more likely than not; nothing where no such day is ahead. Worked out
-- with the advice, and so anew with it for every unit.
alter table standing add column advice_limit_on text;
update standing set advice_on = null;
