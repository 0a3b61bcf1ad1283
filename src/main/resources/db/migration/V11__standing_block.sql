-- How often anything by which the yard is filtered or counted was written in each 1024 rows of standing, so that after a write only those rows
-- are counted again.
create table standing_block (
    block integer primary key,
    written integer not null
);
insert into standing_block (block, written) select distinct rowid >> 10, 1 from standing;

create trigger standing_block_added after insert on standing begin
    insert into standing_block (block, written) values (new.rowid >> 10, 1) on conflict (block) do update set written = written + 1;
end;
create trigger standing_block_changed after update of depot, search_text, in_service, duty, state, condition, since, last_to_retake, visit_count,
    next_due_on, season_due_on, filter_due_on, warranty_until, planned_for, last_seen_ms, installed_on on standing begin
    insert into standing_block (block, written) values (new.rowid >> 10, 1) on conflict (block) do update set written = written + 1;
end;
create trigger standing_block_removed after delete on standing begin
    insert into standing_block (block, written) values (old.rowid >> 10, 1) on conflict (block) do update set written = written + 1;
end;
