-- Return air by a second thermometer held beside the first, K.
alter table visit add column return_second_dry_bulb_k double precision;
