-- The units that were ever to be acted on, for the fleet's history.
create index verdict_of_acts on verdict (unit_id) where state = 'act';
