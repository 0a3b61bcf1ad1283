-- Why the next check is due, beside the day in next_due_on; a word of the list in code.
alter table standing add column next_due_reason text;
create index standing_by_due on standing (next_due_on);
