-- SQLite's own safeguard, part of setting up the file: what was recorded stays. Only a demo may be removed.
create trigger if not exists visit_is_append_only before update on visit
begin select raise(abort, 'visits are append-only'); end;
create trigger if not exists visit_is_kept before delete on visit
when not exists (select 1 from setting where name = 'demo')
begin select raise(abort, 'visits are append-only'); end;
create trigger if not exists withdrawal_is_append_only before update on withdrawal
begin select raise(abort, 'withdrawals are append-only'); end;
create trigger if not exists withdrawal_is_kept before delete on withdrawal
when not exists (select 1 from setting where name = 'demo')
begin select raise(abort, 'withdrawals are append-only'); end;
create trigger if not exists closing_is_append_only before update on closing
begin select raise(abort, 'closings are append-only'); end;
create trigger if not exists closing_is_kept before delete on closing
when not exists (select 1 from setting where name = 'demo')
begin select raise(abort, 'closings are append-only'); end;
create trigger if not exists journal_is_append_only before update on journal
begin select raise(abort, 'the journal is append-only'); end;
create trigger if not exists journal_is_kept before delete on journal
begin select raise(abort, 'the journal is append-only'); end;
create trigger if not exists person_is_kept before delete on person
begin select raise(abort, 'people are closed, not removed'); end;
