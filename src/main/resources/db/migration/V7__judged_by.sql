-- The number of the method that judged a unit; 0, or another number than this version's, means that it is to be judged again.
alter table standing add column judged_by integer not null default 0;
create index standing_by_method on standing (judged_by, unit_id);
