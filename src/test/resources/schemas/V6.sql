CREATE TABLE "flyway_schema_history" (
    "installed_rank" INT NOT NULL PRIMARY KEY,
    "version" VARCHAR(50),
    "description" VARCHAR(200) NOT NULL,
    "type" VARCHAR(20) NOT NULL,
    "script" VARCHAR(1000) NOT NULL,
    "checksum" INT,
    "installed_by" VARCHAR(100) NOT NULL,
    "installed_on" TEXT NOT NULL DEFAULT (strftime('%Y-%m-%d %H:%M:%f','now')),
    "execution_time" INT NOT NULL,
    "success" BOOLEAN NOT NULL
);
-- 
CREATE TABLE setting (
    name text primary key,
    content text not null
);
-- 
CREATE TABLE depot (
    name text primary key,
    altitude_m double precision,
    time_zone text
, climate text);
-- 
CREATE TABLE unit (
    id text primary key,
    label text not null,
    depot text references depot (name),
    nominal_capacity_w double precision,
    refrigerant text,
    rated_amps_a double precision,
    rated_amps_kind text,
    rated_volts_v double precision,
    variable_speed integer not null,
    soft_starter integer not null,
    capacitor_label_uf double precision,
    air_delivery text,
    installed_on text,
    altitude_m double precision not null,
    make text not null,
    model text not null,
    serial text not null,
    serial_key text not null,
    vehicle text not null,
    roof_position text not null,
    owner text not null,
    warranty_until text,
    duty text not null
);
-- 
CREATE TABLE instruments (
    id bigint primary key,
    probe_u_k double precision not null,
    ambient_probe_u_k double precision not null,
    humidity_u double precision not null,
    clamp_relative_u double precision not null,
    clamp_floor_u_a double precision not null,
    voltage_u_v double precision not null,
    one_probe integer not null
);
-- 
CREATE TABLE visit (
    id text primary key,
    unit_id text not null references unit (id),
    visited_at_ms bigint not null,
    utc_offset_s integer not null,
    technician text not null,
    instruments_id bigint not null references instruments (id),
    return_dry_bulb_k double precision,
    return_relative_humidity double precision,
    return_wet_bulb_k double precision,
    return_dew_point_k double precision,
    supply_dry_bulb_k double precision,
    supply_at text,
    ambient_dry_bulb_k double precision,
    ambient_at text,
    ambient_relative_humidity double precision,
    amps_a double precision,
    volts_v double precision,
    run_time_min double precision,
    condenser_entering_dry_bulb_k double precision,
    condenser_leaving_dry_bulb_k double precision,
    room_dry_bulb_k double precision,
    fan_only_amps_a double precision,
    start_peak_a double precision,
    capacitor_uf double precision,
    fan_speed text,
    power_source text,
    filter_look text,
    coil_look text,
    iced_coil integer not null,
    work_done text not null,
    notes text not null,
    -- What was typed: the reader's system, and one line a box, the box's name (with its unit of measure) and its text.
    typed_system text not null,
    typed_readings text not null,
    received_at_ms bigint not null,
    -- Its UTC day, and the day at whose closing it is learned from in the generation in which it was received: its own, or the
    -- first one not yet closed when it came late. In later generations it is learned from on its own day.
    day text not null,
    closes_on text not null,
    generation integer not null,
    saved_by text not null,
    corrects_id text unique references visit (id),
    correction_reason text
);
-- 
CREATE TABLE withdrawal (
    visit_id text primary key references visit (id),
    withdrawn_by text not null,
    withdrawn_at_ms bigint not null,
    reason text not null
);
-- 
CREATE TABLE verdict (
    visit_id text primary key references visit (id),
    unit_id text not null references unit (id),
    visited_at_ms bigint not null,
    state text not null,
    condition text not null,
    p_steady double precision not null,
    p_condenser_fouling double precision not null,
    p_evaporator_fouling double precision not null,
    p_refrigerant_loss double precision not null,
    p_compressor_wear double precision not null,
    p_capacitor_weak double precision not null,
    p_air_recirculation double precision not null,
    p_other double precision not null,
    p_impact double precision not null,
    since text,
    expected_split_k double precision,
    expected_split_u_k double precision,
    expected_amps_a double precision,
    expected_amps_u_a double precision,
    split_departure double precision,
    split_departure_u double precision,
    amps_departure double precision,
    amps_departure_u double precision,
    capacity_lost double precision,
    capacity_lost_u double precision,
    amps_gained double precision,
    amps_gained_u double precision,
    closing_day text
);
-- 
CREATE TABLE standing (
    unit_id text primary key references unit (id),
    depot text,
    label text not null,
    search_text text not null,
    in_service integer not null,
    state text,
    state_rank integer not null,
    condition text,
    likeliest_fault text,
    p_likeliest_fault double precision,
    p_steady double precision,
    p_impact double precision not null,
    since text,
    judged_visit_id text,
    judged_at_ms bigint,
    last_visit_id text,
    last_visit_at_ms bigint,
    last_to_retake integer not null,
    visit_count integer not null,
    next_due_on text
, next_due_reason text, advice_option text, advice_works text, advice_timing text, advice_saving_minor bigint, advice_waiting_minor bigint, advice_currency text, advice_on text, duty text not null default 'in_service', installed_on text, warranty_until text, season_due_on text, filter_due_on text, planned_for text, pressing double precision not null default -2.0, dearest double precision not null default -0.002, last_seen_ms bigint not null default 0);
-- 
CREATE TABLE closing (
    generation integer not null,
    day text not null,
    learned_key text not null,
    numbers text not null,
    primary key (generation, day, learned_key)
);
-- 
CREATE TABLE person (
    id text primary key,
    name text not null,
    name_key text not null unique,
    role text not null,
    depots text,
    password_hash text,
    active integer not null
);
-- 
CREATE TABLE session (
    id text primary key,
    secret_hash text not null unique,
    person_id text not null references person (id),
    kind text not null,
    label text not null,
    began_at_ms bigint not null,
    used_at_ms bigint not null
);
-- 
CREATE TABLE program (
    id text primary key,
    secret_hash text not null unique,
    person_id text not null references person (id),
    name text not null,
    most text not null,
    depots text,
    made_at_ms bigint not null,
    ends_at_ms bigint not null,
    used_at_ms bigint
);
-- 
CREATE TABLE invitation (
    secret_hash text primary key,
    person_id text not null references person (id),
    ends_at_ms bigint not null
);
-- 
CREATE TABLE sheet_link (
    id text primary key,
    secret_hash text not null unique,
    unit_id text not null references unit (id),
    made_by text not null,
    made_at_ms bigint not null,
    ends_at_ms bigint not null,
    withdrawn_at_ms bigint
);
-- 
CREATE TABLE acting (
    one integer primary key check (one = 1),
    at_ms bigint not null,
    who text not null,
    person_id text,
    way text not null
);
-- 
CREATE TABLE journal (
    id integer primary key,
    at_ms bigint not null,
    who text not null,
    person_id text,
    way text not null,
    about text not null,
    about_id text not null,
    unit_id text,
    event text not null,
    before_json text,
    after_json text
);
-- 
CREATE TABLE unit_change (
    id bigint primary key,
    unit_id text not null references unit (id),
    kind text not null,
    happened_on text not null,
    recorded_at_ms bigint not null,
    recorded_by text not null,
    reason text not null,
    -- the other unit of a swap or a replacement
    other_unit_id text references unit (id),
    -- one line a field: its name, a space, its text; line breaks became spaces
    before_fields text not null,
    after_fields text not null
);
-- 
CREATE TABLE photo (
    id text primary key,
    visit_id text not null references visit (id),
    subject text not null,
    content_type text not null,
    received_at_ms bigint not null,
    saved_by text not null,
    bytes blob,
    removed_by text,
    removed_at_ms bigint,
    removal_reason text
);
-- 
CREATE TABLE technician (
    name text primary key,
    thermometer_kind text not null,
    ambient_thermometer_kind text not null,
    hygrometer_kind text not null,
    clamp_kind text not null,
    voltmeter_kind text not null,
    probe_u_k double precision not null,
    ambient_probe_u_k double precision not null,
    humidity_u double precision not null,
    clamp_relative_u double precision not null,
    clamp_floor_u_a double precision not null,
    voltage_u_v double precision not null
);
-- 
CREATE TABLE business (
    id bigint primary key,
    name text not null,
    address text not null,
    telephone text not null,
    licence_number text not null,
    logo_type text,
    logo blob
);
-- 
CREATE TABLE price (
    scope text not null,
    name text not null,
    figure text not null,
    amount text not null,
    primary key (scope, name, figure)
);
-- 
CREATE TABLE quote (
    unit_id text primary key references unit (id),
    work text not null,
    price_minor bigint not null,
    currency text not null,
    offered_by text not null,
    offered_on text
);
-- 
CREATE TABLE planned_work (
    id text primary key,
    unit_id text not null references unit (id),
    works text not null,
    planned_for text not null,
    price_minor bigint,
    currency text,
    note text not null,
    planned_by text not null,
    planned_at_ms bigint not null,
    ended_as text,
    ended_by text,
    ended_at_ms bigint
);
-- 
CREATE TABLE stand (
    unit_id text primary key references unit (id),
    stand_row text not null,
    stand_place text not null
);
-- 
CREATE TABLE visit_round (
    id text primary key,
    title text not null,
    for_day text not null,
    made_by text not null,
    made_at_ms bigint not null
);
-- 
CREATE TABLE visit_round_stop (
    round_id text not null references visit_round (id),
    unit_id text not null references unit (id),
    position integer not null,
    visit_id text not null unique,
    primary key (round_id, unit_id)
);
-- 
CREATE TABLE file_form (
    header text primary key,
    columns text not null,
    answers text not null,
    said_by text not null
);
-- 
insert into "flyway_schema_history" values (1, '1', 'units visits verdicts', 'SQL', 'V1__units_visits_verdicts.sql', -959695146, '', '2026-11-25 14:23:14.432', 1, 1);
-- 
insert into "flyway_schema_history" values (2, '2', 'people and journal', 'SQL', 'V2__people_and_journal.sql', -1916098512, '', '2026-11-25 16:02:19.064', 4, 1);
-- 
insert into "flyway_schema_history" values (3, '3', 'records', 'SQL', 'V3__records.sql', -743477048, '', '2026-11-25 17:25:01.029', 9, 1);
-- 
insert into "flyway_schema_history" values (4, '4', 'money', 'SQL', 'V4__money.sql', -2019822408, '', '2026-11-25 17:25:01.343', 3, 1);
-- 
insert into "flyway_schema_history" values (5, '5', 'yard', 'SQL', 'V5__yard.sql', 708033969, '', '2026-11-25 17:25:01.533', 4, 1);
-- 
insert into "flyway_schema_history" values (6, '6', 'file form', 'SQL', 'V6__file_form.sql', 400346162, '', '2026-11-25 17:25:01.656', 0, 1);
-- 
insert into "setting" values ('closed_through', '2031-06-03');
-- 
insert into "depot" values ('Ferrow Flats', 374.904, NULL, NULL);
-- 
insert into "unit" values ('u1', 'Wagon u1', 'Ferrow Flats', 3956.459445, 'R-32', 12.7, 'rla_plus_fan', 115.0, 0, 1, 45.0, 'ducted', '2019-04-02', 374.904, 'Nimbell', 'NB-135', 'SO1-5I u1', '50151U1', 'Van 12', 'rear', 'Ferrow Rentals', '2027-04-01', 'in_service');
-- 
insert into "unit" values ('u2', 'Wagon u2', 'Ferrow Flats', 3956.459445, 'R-32', 12.7, 'rla_plus_fan', 115.0, 0, 1, 45.0, 'ducted', '2019-04-02', 374.904, 'Nimbell', 'NB-135', 'SO1-5I u2', '50151U2', 'Van 12', 'rear', 'Ferrow Rentals', '2027-04-01', 'in_service');
-- 
insert into "instruments" values (1, 0.41666666666666663, 0.55555555555555558, 0.038, 0.012, 0.06, 1.0, 0);
-- 
insert into "visit" values ('a1', 'u1', 1938092400000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938103200000, '2031-06-01', '2031-06-01', 1, 'ines', NULL, NULL);
-- 
insert into "visit" values ('b1', 'u2', 1938096000000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938103200000, '2031-06-01', '2031-06-01', 1, 'ines', NULL, NULL);
-- 
insert into "visit" values ('a2', 'u1', 1938178800000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938189600000, '2031-06-02', '2031-06-02', 1, 'ines', NULL, NULL);
-- 
insert into "visit" values ('b2', 'u2', 1938182400000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938189600000, '2031-06-02', '2031-06-02', 1, 'ines', NULL, NULL);
-- 
insert into "visit" values ('a3', 'u1', 1938265200000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938276000000, '2031-06-03', '2031-06-03', 1, 'ines', NULL, NULL);
-- 
insert into "visit" values ('b3', 'u2', 1938268800000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938276000000, '2031-06-03', '2031-06-03', 1, 'ines', NULL, NULL);
-- 
insert into "visit" values ('c1', 'u1', 1938178860000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'si', '', 1938276000000, '2031-06-02', '2031-06-03', 1, 'otto', 'a2', 'read the wrong unit');
-- 
insert into "visit" values ('a4', 'u1', 1938351600000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938362400000, '2031-06-04', '2031-06-04', 1, 'ines', NULL, NULL);
-- 
insert into "visit" values ('b4', 'u2', 1938355200000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938362400000, '2031-06-04', '2031-06-04', 1, 'ines', NULL, NULL);
-- 
insert into "withdrawal" values ('b1', 'otto', 1938276000000, 'another van');
-- 
insert into "verdict" values ('a1', 'u1', 1938092400000, 'steady', 'none', 0.77513081733596201, 0.13428691864301506, 0.028522143926545455, 0.0016115208993314112, 0.0036632580155184962, 0.00068329939333554714, 0.0016066754792782162, 0.054495366307014043, 0.094015397400682127, NULL, 9.6624006710099337, 1.909281526586772, 10.430862641123337, 0.84756666251643409, 0.14965380548807056, 0.19759908449203339, 0.15091274968136226, 0.081255663282817095, 0.075189103170786628, 0.026391953415476042, 0.07845144197057996, 0.028887924041458086, NULL);
-- 
insert into "verdict" values ('c1', 'u1', 1938178860000, 'steady', 'none', 0.57631624252597213, 0.34046133579035409, 0.041597909209418277, 0.0010525863615214758, 0.0029697984124291972, 0.0, 0.0010880344151050819, 0.036514093285199785, 0.12490281694167761, '2031-06-01', 10.855454350351224, 1.2757292898461865, 11.912641711980561, 0.47929702905026045, 0.03322828073095549, 0.11751965865941952, 0.01808155797247718, 0.040234319191202635, 0.065004164635140929, 0.021412539680864207, 0.075592562573727956, 0.023520891011544236, '2031-06-01');
-- 
insert into "verdict" values ('a3', 'u1', 1938265200000, 'drifting', 'condenser_fouling', 0.29529049988447575, 0.60825788192266916, 0.079331913780780528, 0.00050344622018718744, 0.0015578727546426902, 0.0, 0.00055937579093327122, 0.014499009646311494, 0.17073842480690282, '2031-06-01', 11.08249735697839, 1.1861744518195325, 11.788496876748047, 0.51833820371121575, 0.012528890354044003, 0.10703133180290146, 0.028557507904365564, 0.043969830007216625, 0.064039640376626281, 0.017947593534242832, 0.074684941592362858, 0.019812639708282624, '2031-06-02');
-- 
insert into "verdict" values ('a4', 'u1', 1938351600000, 'drifting', 'condenser_fouling', 0.10627082114524201, 0.77712756929311033, 0.11173609703052005, 0.00017066989701590337, 0.00055036131297602538, 0.0, 0.00021166128263203367, 0.0039328200385036951, 0.19515758495155522, '2031-06-01', 11.222086291738112, 1.1768391405094658, 11.602681675361637, 0.51516845467294326, 1.2112690754767508e-05, 0.10486812433227095, 0.04444547265088078, 0.044400809148018472, 0.063706425571777567, 0.015138580761423739, 0.074423360702914013, 0.016753896940330974, '2031-06-03');
-- 
insert into "verdict" values ('b2', 'u2', 1938182400000, 'steady', 'none', 0.90423126173374469, 0.0433967029920653, 0.027042693795842183, 0.0032425962925112079, 0.0071461081725144827, 0.00033971315462414238, 0.0020988132598458477, 0.012502110598852076, 0.023379623001039424, NULL, 10.868112004594439, 1.6624539969435717, 11.839751294104865, 0.80012144081383263, 0.032062942087305923, 0.15296621862571694, 0.024219099286186818, 0.067579243933292871, NULL, NULL, NULL, NULL, '2031-06-01');
-- 
insert into "verdict" values ('b3', 'u2', 1938268800000, 'steady', 'none', 0.80471072479002004, 0.12754520373136533, 0.046065512735909538, 0.002583141672528285, 0.0071321378293481711, 0.0, 0.0016829461187141104, 0.010280333122114581, 0.03419058655478615, NULL, 11.041882107207785, 1.2170899692756934, 12.107206363939236, 0.35921977512607012, 0.016200432460936, 0.11022486542228305, 0.0018808803653587725, 0.029669914291375249, 0.055321769876023254, 0.019980857173488957, 0.06485088314815643, 0.022390643980249262, '2031-06-02');
-- 
insert into "verdict" values ('b4', 'u2', 1938355200000, 'steady', 'none', 0.56484135717491002, 0.30361221588869869, 0.11745337145196158, 0.0016982491028436383, 0.0050931057421040663, 0.0, 0.0011771121427176586, 0.0061245884967644675, 0.069735062097894679, '2031-06-02', 11.110831003677788, 1.1344526509216248, 12.048724971614822, 0.38157616937273964, 0.0099755408399368473, 0.10210331257365993, 0.0067228801019722229, 0.031669423135782568, 0.056708736181815218, 0.01758459433353262, 0.066516825045171396, 0.019788324307005587, '2031-06-03');
-- 
insert into "standing" values ('u1', 'Ferrow Flats', 'Wagon u1', 'u1
wag0n u1
501-51 u1
50151u1
van 12
rear
ferr0w rental5
n1mbell
nb-135', 1, 'drifting', 2, 'condenser_fouling', 'condenser_fouling', 0.77712756929311033, 0.10627082114524201, 0.19515758495155522, '2031-06-01', 'a4', 1938351600000, 'a4', 1938351600000, 0, 4, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, 'in_service', '2019-04-02', '2027-04-01', NULL, NULL, NULL, -4.1951575849515557, -0.0041951575849515557, 1938351600000);
-- 
insert into "standing" values ('u2', 'Ferrow Flats', 'Wagon u2', 'u2
wag0n u2
501-51 u2
50151u2
van 12
rear
ferr0w rental5
n1mbell
nb-135', 1, 'steady', 0, 'none', 'condenser_fouling', 0.30361221588869869, 0.56484135717491002, 0.069735062097894679, '2031-06-02', 'b4', 1938355200000, 'b4', 1938355200000, 0, 3, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, 'in_service', '2019-04-02', '2027-04-01', NULL, NULL, NULL, -0.069735062097894679, -6.973506209789468e-05, 1938355200000);
-- 
insert into "closing" values (1, '2031-06-01', 'class/13500/R-32/DUCTED', '0.16450738176463353 0.08383118082113157 0.12305259080145214 0.039592965991707495');
-- 
insert into "closing" values (1, '2031-06-01', 'class/all', '0.1275673844595644 0.12876957043766862 0.065044562189062 0.06762145938271832');
-- 
insert into "closing" values (1, '2031-06-01', 'moisture/Ferrow Flats/6', '2.0 7.395815136176567');
-- 
insert into "closing" values (1, '2031-06-01', 'slopes', '3.2627994457453815E-5 5.908785945896691E-5 2.4470995843089206E-5 2.053051900025529E-4 2.0835219678908112E-4 3.7731664255042177E-4 1.5626414759180345E-4 0.001310438660647251 2.249979275675368E-4 -3.753083821446404E-9 -1.5543243474094546E-9 -1.3035073121825097E-8 -3.753083821446404E-9 2.2499320333066537E-4 -2.8148128660846707E-9 -2.3605942733136762E-8 -1.5543243474094546E-9 -2.8148128660846707E-9 2.2499883425673944E-4 -9.77630484136836E-9 -1.3035073121825097E-8 -2.3605942733136762E-8 -9.77630484136836E-9 2.2491760041531972E-4 2.2498777633801664E-4 -2.2136512934898284E-8 -9.16774648752621E-9 -7.688444481461836E-8 -2.2136512934898284E-8 2.249599117510298E-4 -1.660238470117293E-8 -1.392343398767815E-7 -9.16774648752621E-9 -1.660238470117293E-8 2.2499312419013435E-4 -5.766333361096104E-8 -7.688444481461836E-8 -1.392343398767815E-7 -5.766333361096104E-8 2.2451397523051225E-4');
-- 
insert into "closing" values (1, '2031-06-01', 'sum/class/13500/R-32/DUCTED', '81.9869327524031 15.71522571925281 419.2256277829619 64.27263373230119');
-- 
insert into "closing" values (1, '2031-06-01', 'technician/Ines/2031', '0.04142953963028985 0.3260677473297885 0.0032527905831792004 0.011904652455521537');
-- 
insert into "closing" values (1, '2031-06-02', 'moisture/Ferrow Flats/6', '4.0 7.395815136176567');
-- 
insert into "closing" values (1, '2031-06-02', 'slopes', '5.052956705031819E-5 9.150681817985816E-5 3.7897175287736854E-5 3.1820521594605407E-4 2.2275713973469072E-4 4.034033591395921E-4 1.6706785480101016E-4 0.0014012173616393332 2.2499355817297956E-4 -1.1665864726656979E-8 -4.831370265330223E-9 -4.057916078829977E-8 -1.1665864726656979E-8 2.2497887363330483E-4 -8.74939854499232E-9 -7.348707113299506E-8 -4.831370265330223E-9 -8.74939854499232E-9 2.2499637647230102E-4 -3.0434370591223384E-8 -4.057916078829977E-8 -7.348707113299506E-8 -3.0434370591223384E-8 2.2474309742118357E-4 2.2496962838324468E-4 -5.5001658919649494E-8 -2.2778712566503344E-8 -1.9129257652317328E-7 -5.5001658919649494E-8 2.2490039442061042E-4 -4.125124418973517E-8 -3.4642242237364264E-7 -2.2778712566503344E-8 -4.125124418973517E-8 2.2498291596557512E-4 -1.434694323923732E-7 -1.9129257652317328E-7 -3.4642242237364264E-7 -1.434694323923732E-7 2.2378909230156654E-4');
-- 
insert into "closing" values (1, '2031-06-02', 'technician/Ines/2031', '0.07282479634518504 0.3148888947253233 0.003579223682925409 0.01170167116196082');
-- 
insert into "closing" values (1, '2031-06-03', 'moisture/Ferrow Flats/6', '7.0 7.395815136176567');
-- 
insert into "closing" values (1, '2031-06-03', 'slopes', '6.777759855167143E-5 1.2274224279735165E-4 5.0833198913751165E-5 4.233538189799188E-4 2.2954135996216906E-4 4.1568928286875783E-4 1.7215601997161867E-4 0.0014406030871302563 2.2498606732648E-4 -2.523145748080625E-8 -1.0449505139996942E-8 -8.691298434289232E-8 -2.523145748080625E-8 2.2495430694290713E-4 -1.892359311060379E-8 -1.5739558282409274E-7 -1.0449505139996942E-8 -1.892359311060379E-8 2.2499216287114501E-4 -6.518473825716614E-8 -8.691298434289232E-8 -1.5739558282409274E-7 -6.518473825716614E-8 2.2445516798002952E-4 2.2494212241800935E-4 -1.048137492774601E-7 -4.340818649300525E-8 -3.611395907797629E-7 -1.048137492774601E-7 2.2481018692108856E-4 -7.861031195809136E-8 -6.540078769747553E-7 -4.340818649300525E-8 -7.861031195809136E-8 2.2496744386013023E-4 -2.708546930848094E-7 -3.611395907797629E-7 -6.540078769747553E-7 -2.708546930848094E-7 2.227354124250974E-4');
-- 
insert into "closing" values (1, '2031-06-03', 'technician/Ines/2031', '0.09964493923605759 0.29915348103371053 0.0037247444396579414 0.011418831426047419');
-- 
CREATE INDEX "flyway_schema_history_s_idx" ON "flyway_schema_history" ("success");
-- 
CREATE INDEX unit_by_depot on unit (depot, id);
-- 
CREATE INDEX unit_by_serial_key on unit (serial_key);
-- 
CREATE INDEX visit_by_unit on visit (unit_id, visited_at_ms);
-- 
CREATE INDEX visit_by_day on visit (day);
-- 
CREATE INDEX visit_by_closing on visit (closes_on);
-- 
CREATE INDEX verdict_by_unit on verdict (unit_id, visited_at_ms);
-- 
CREATE TRIGGER visit_is_append_only before update on visit
begin select raise(abort, 'visits are append-only'); end;
-- 
CREATE TRIGGER visit_is_kept before delete on visit
when not exists (select 1 from setting where name = 'demo')
begin select raise(abort, 'visits are append-only'); end;
-- 
CREATE TRIGGER withdrawal_is_append_only before update on withdrawal
begin select raise(abort, 'withdrawals are append-only'); end;
-- 
CREATE TRIGGER withdrawal_is_kept before delete on withdrawal
when not exists (select 1 from setting where name = 'demo')
begin select raise(abort, 'withdrawals are append-only'); end;
-- 
CREATE TRIGGER closing_is_append_only before update on closing
begin select raise(abort, 'closings are append-only'); end;
-- 
CREATE TRIGGER closing_is_kept before delete on closing
when not exists (select 1 from setting where name = 'demo')
begin select raise(abort, 'closings are append-only'); end;
-- 
CREATE INDEX session_by_person on session (person_id);
-- 
CREATE INDEX program_by_person on program (person_id);
-- 
CREATE INDEX invitation_by_person on invitation (person_id);
-- 
CREATE INDEX sheet_link_by_unit on sheet_link (unit_id);
-- 
CREATE INDEX journal_by_unit on journal (unit_id, id);
-- 
CREATE INDEX journal_by_about on journal (about, about_id, id);
-- 
CREATE INDEX unit_change_by_unit on unit_change (unit_id, id);
-- 
CREATE INDEX photo_by_visit on photo (visit_id);
-- 
CREATE INDEX planned_work_by_unit on planned_work (unit_id, planned_for);
-- 
CREATE INDEX planned_work_by_day on planned_work (planned_for, unit_id);
-- 
CREATE INDEX standing_by_advice_day on standing (advice_on, unit_id);
-- 
CREATE INDEX standing_by_dearest on standing (in_service, dearest, unit_id, depot, state, condition, since, last_to_retake, visit_count,
    next_due_on, season_due_on, filter_due_on, warranty_until, planned_for, last_seen_ms, installed_on, duty);
-- 
CREATE INDEX standing_by_pressing on standing (in_service, pressing, unit_id, depot, state, condition, since, last_to_retake, visit_count,
    next_due_on, season_due_on, filter_due_on, warranty_until, planned_for, last_seen_ms, installed_on, duty);
-- 
CREATE INDEX standing_by_depot on standing (depot, in_service, dearest, unit_id);
-- 
CREATE INDEX standing_by_last_visit on standing (in_service, last_seen_ms, unit_id);
-- 
CREATE INDEX standing_by_label on standing (in_service, label, unit_id);
-- 
CREATE TRIGGER standing_planned_added after insert on planned_work begin
    update standing set planned_for = (select min(p.planned_for) from planned_work p where p.unit_id = new.unit_id and p.ended_as is null)
    where unit_id = new.unit_id;
end;
-- 
CREATE TRIGGER standing_planned_changed after update on planned_work begin
    update standing set planned_for = (select min(p.planned_for) from planned_work p where p.unit_id = new.unit_id and p.ended_as is null)
    where unit_id = new.unit_id;
end;
-- 
CREATE TRIGGER standing_planned_removed after delete on planned_work begin
    update standing set planned_for = (select min(p.planned_for) from planned_work p where p.unit_id = old.unit_id and p.ended_as is null)
    where unit_id = old.unit_id;
end;
-- 
CREATE INDEX visit_round_by_day on visit_round (for_day);
-- 
CREATE INDEX visit_round_stop_by_unit on visit_round_stop (unit_id);
-- 
CREATE INDEX verdict_of_acts on verdict (unit_id) where state = 'act';
-- 
