-- How much units run at a depot: the season's first and last day and twelve run-hours a day, January first, with spaces between, such
-- as '04-01 10-31 0.0 0.0 0.0 2.0 4.0 7.0 9.0 9.0 6.0 2.0 0.0 0.0'; null where nobody said so.
alter table depot add column climate text;
