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
, return_second_dry_bulb_k double precision);
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
, next_due_reason text, advice_option text, advice_works text, advice_timing text, advice_saving_minor bigint, advice_waiting_minor bigint, advice_currency text, advice_on text, duty text not null default 'in_service', installed_on text, warranty_until text, season_due_on text, filter_due_on text, planned_for text, pressing double precision not null default -2.0, dearest double precision not null default -0.002, last_seen_ms bigint not null default 0, judged_by integer not null default 0, advice_limit_on text);
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
CREATE TABLE standing_block (
    block integer primary key,
    written integer not null
);
-- 
insert into "flyway_schema_history" values (1, '1', 'units visits verdicts', 'SQL', 'V1__units_visits_verdicts.sql', -959695146, '', '2026-11-25 20:15:48.513', 0, 1);
-- 
insert into "flyway_schema_history" values (2, '2', 'people and journal', 'SQL', 'V2__people_and_journal.sql', -1916098512, '', '2026-11-25 20:15:48.536', 0, 1);
-- 
insert into "flyway_schema_history" values (3, '3', 'records', 'SQL', 'V3__records.sql', -743477048, '', '2026-11-25 20:15:48.544', 0, 1);
-- 
insert into "flyway_schema_history" values (4, '4', 'money', 'SQL', 'V4__money.sql', -2019822408, '', '2026-11-25 20:15:48.554', 2, 1);
-- 
insert into "flyway_schema_history" values (5, '5', 'yard', 'SQL', 'V5__yard.sql', 708033969, '', '2026-11-25 20:15:48.563', 7, 1);
-- 
insert into "flyway_schema_history" values (6, '6', 'file form', 'SQL', 'V6__file_form.sql', 400346162, '', '2026-11-25 20:15:48.567', 0, 1);
-- 
insert into "flyway_schema_history" values (7, '7', 'judged by', 'SQL', 'V7__judged_by.sql', -1374779311, '', '2026-11-25 20:15:48.572', 0, 1);
-- 
insert into "flyway_schema_history" values (8, '8', 'limit date', 'SQL', 'V8__limit_date.sql', 303488786, '', '2026-11-25 20:15:48.577', 1, 1);
-- 
insert into "flyway_schema_history" values (9, '9', 'second thermometer', 'SQL', 'V9__second_thermometer.sql', -784411848, '', '2026-11-25 20:15:48.579', 0, 1);
-- 
insert into "flyway_schema_history" values (10, '11', 'standing block', 'SQL', 'V11__standing_block.sql', 1536224091, '', '2026-11-25 20:15:48.583', 0, 1);
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
', 1938103200000, '2031-06-01', '2031-06-01', 1, 'ines', NULL, NULL, NULL);
-- 
insert into "visit" values ('b1', 'u2', 1938096000000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938103200000, '2031-06-01', '2031-06-01', 1, 'ines', NULL, NULL, NULL);
-- 
insert into "visit" values ('a2', 'u1', 1938178800000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938189600000, '2031-06-02', '2031-06-02', 1, 'ines', NULL, NULL, NULL);
-- 
insert into "visit" values ('b2', 'u2', 1938182400000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938189600000, '2031-06-02', '2031-06-02', 1, 'ines', NULL, NULL, NULL);
-- 
insert into "visit" values ('a3', 'u1', 1938265200000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938276000000, '2031-06-03', '2031-06-03', 1, 'ines', NULL, NULL, NULL);
-- 
insert into "visit" values ('b3', 'u2', 1938268800000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938276000000, '2031-06-03', '2031-06-03', 1, 'ines', NULL, NULL, NULL);
-- 
insert into "visit" values ('c1', 'u1', 1938178860000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'si', '', 1938276000000, '2031-06-02', '2031-06-03', 1, 'otto', 'a2', 'read the wrong unit', NULL);
-- 
insert into "visit" values ('a4', 'u1', 1938351600000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938362400000, '2031-06-04', '2031-06-04', 1, 'ines', NULL, NULL, NULL);
-- 
insert into "visit" values ('b4', 'u2', 1938355200000, -12600, 'Ines', 1, 298.31666666666666, 0.51, NULL, NULL, 287.09444444444443, 'near_register', 306.31666666666666, 'inlet', 0.38, 12.13, 117.0, 19.0, 307.09444444444443, 318.09444444444449, 298.70555555555558, 2.7, 58.0, 44.1, 'high', 'generator', 'dirty', 'light', 0, 'filter+capacitor', 'windy; "gusts"', 'us', 'return_db_f 77.30
supply_db_f 57.1
', 1938362400000, '2031-06-04', '2031-06-04', 1, 'ines', NULL, NULL, NULL);
-- 
insert into "withdrawal" values ('b1', 'otto', 1938276000000, 'another van');
-- 
insert into "verdict" values ('a1', 'u1', 1938092400000, 'steady', 'none', 0.7751308173359619, 0.13428691864301504, 0.028522143926545469, 0.001611520899331414, 0.0036632580155184992, 0.00068329939333554638, 0.0016066754792782162, 0.054495366307014043, 0.094015397400617609, NULL, 9.6624006710099337, 1.909281526586772, 10.430862641123337, 0.84756666251643409, 0.14965380548807053, 0.19759908449203339, 0.15091274968136226, 0.081255663282817095, 0.075189103170786614, 0.026391953415476056, 0.078451441970579947, 0.028887924041458131, NULL);
-- 
insert into "verdict" values ('c1', 'u1', 1938178860000, 'steady', 'none', 0.5759258127015725, 0.34071647473299571, 0.041616881688054996, 0.0010500040091448557, 0.0029613944258033063, 0.0, 0.0010864360892145991, 0.036642996353213928, 0.12506148317149954, '2031-06-01', 10.855454350351229, 1.2734771123345772, 11.912641711980561, 0.47978016387648864, 0.033228280730955129, 0.11731218899127642, 0.018081557972476958, 0.040274875672116711, 0.065004835102054306, 0.021409688002151935, 0.075593447300192504, 0.023517780687593855, '2031-06-01');
-- 
insert into "verdict" values ('a3', 'u1', 1938265200000, 'drifting', 'condenser_fouling', 0.29563965239502, 0.60760608864418109, 0.079552035007034283, 0.00050068492304190749, 0.0015480884527160825, 0.0, 0.00055886618390337363, 0.014594584394103362, 0.17035353977458728, '2031-06-01', 11.082433620927814, 1.1702282601477991, 11.788165352525542, 0.51700330100913006, 0.012534641425467646, 0.10559307641039843, 0.028585630988057248, 0.043857825670757605, 0.064004011297064192, 0.017939917833636757, 0.074645790328439432, 0.019806184348092899, '2031-06-02');
-- 
insert into "verdict" values ('a4', 'u1', 1938351600000, 'drifting', 'condenser_fouling', 0.10752279099675616, 0.7745477603543, 0.11301840565144473, 0.0001702286206708297, 0.00054850212067905884, 0.0, 0.00021336841546661835, 0.00397894384068272, 0.19384442313607306, '2031-06-01', 11.221377812437531, 1.143249589418899, 11.603424175992528, 0.51173509417211893, 7.5247267264710871e-05, 0.10188139179769404, 0.044381480817360403, 0.044102075939867674, 0.063615283400297942, 0.015131576557948629, 0.07432255125130019, 0.016752355091523823, '2031-06-03');
-- 
insert into "verdict" values ('b2', 'u2', 1938182400000, 'steady', 'none', 0.90423126173374491, 0.043396702992065273, 0.027042693795842166, 0.0032425962925112088, 0.007146108172514487, 0.00033971315462414265, 0.0020988132598458486, 0.012502110598852074, 0.023379623000964127, NULL, 10.868112004594439, 1.6624539969435717, 11.839751294104865, 0.8001214408138323, 0.032062942087305868, 0.15296621862571694, 0.024219099286186763, 0.067579243933292843, NULL, NULL, NULL, NULL, '2031-06-01');
-- 
insert into "verdict" values ('b3', 'u2', 1938268800000, 'steady', 'none', 0.8050081098741726, 0.1273947420797516, 0.045949658973105774, 0.0025788966067999105, 0.0071161229958165775, 0.0, 0.0016824025440537456, 0.010270066926299771, 0.034083935243154215, NULL, 11.04188210720779, 1.2091190983965863, 12.107206363939241, 0.35884482916810701, 0.016200432460935416, 0.10950298931441332, 0.0018808803653582173, 0.029638945466140716, 0.055301692828968414, 0.019976854190486882, 0.064828424904781, 0.022387004063177472, '2031-06-02');
-- 
insert into "verdict" values ('b4', 'u2', 1938355200000, 'steady', 'none', 0.5671952810503742, 0.30185929640682269, 0.11689115838548225, 0.0016944247879517964, 0.0050688111510332513, 0.0, 0.0011799978323581604, 0.0061110303859776239, 0.068994090241672773, '2031-06-02', 11.110941358631917, 1.109493545489147, 12.048836612605479, 0.37839801109779625, 0.0099656086930015042, 0.09985594466549845, 0.0067136143519694047, 0.03140535665509122, 0.056629003824178827, 0.017584928685118573, 0.066427129079764183, 0.019792005466996689, '2031-06-03');
-- 
insert into "standing" values ('u1', 'Ferrow Flats', 'Wagon u1', 'u1
wag0n u1
501-51 u1
50151u1
van 12
rear
ferr0w rental5
n1mbell
nb-135', 1, 'drifting', 2, 'condenser_fouling', 'condenser_fouling', 0.7745477603543, 0.10752279099675616, 0.19384442313607306, '2031-06-01', 'a4', 1938351600000, 'a4', 1938351600000, 0, 4, '2031-06-11', 'after_work', 'keep', '', 'look_again_in_30_days', 0, 0, 'USD', '2031-06-04', 'in_service', '2019-04-02', '2027-04-01', '2032-04-01', '2032-06-03', NULL, -4.1938444231360732, -0.0041938444231360735, 1938351600000, 1, '2031-07-30');
-- 
insert into "standing" values ('u2', 'Ferrow Flats', 'Wagon u2', 'u2
wag0n u2
501-51 u2
50151u2
van 12
rear
ferr0w rental5
n1mbell
nb-135', 1, 'steady', 0, 'none', 'condenser_fouling', 0.30185929640682269, 0.5671952810503742, 0.068994090241672773, '2031-06-02', 'b4', 1938355200000, 'b4', 1938355200000, 0, 3, '2031-06-11', 'after_work', 'keep', '', 'next_check', 0, 0, 'USD', '2031-06-04', 'in_service', '2019-04-02', '2027-04-01', '2032-04-01', '2032-06-03', NULL, -0.068994090241672773, -6.8994090241672774e-05, 1938355200000, 1, NULL);
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
insert into "journal" values (1, 1938103200000, 'Longsummer', NULL, 'itself', 'depot', 'Ferrow Flats', NULL, 'added', NULL, NULL);
-- 
insert into "journal" values (2, 1938103200000, 'Longsummer', NULL, 'itself', 'unit', 'u1', 'u1', 'added', NULL, NULL);
-- 
insert into "journal" values (3, 1938103200000, 'Longsummer', NULL, 'itself', 'unit', 'u2', 'u2', 'added', NULL, NULL);
-- 
insert into "standing_block" values (0, 18);
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
CREATE INDEX standing_by_method on standing (judged_by, unit_id);
-- 
CREATE TRIGGER standing_block_added after insert on standing begin
    insert into standing_block (block, written) values (new.rowid >> 10, 1) on conflict (block) do update set written = written + 1;
end;
-- 
CREATE TRIGGER standing_block_changed after update of depot, search_text, in_service, duty, state, condition, since, last_to_retake, visit_count,
    next_due_on, season_due_on, filter_due_on, warranty_until, planned_for, last_seen_ms, installed_on on standing begin
    insert into standing_block (block, written) values (new.rowid >> 10, 1) on conflict (block) do update set written = written + 1;
end;
-- 
CREATE TRIGGER standing_block_removed after delete on standing begin
    insert into standing_block (block, written) values (old.rowid >> 10, 1) on conflict (block) do update set written = written + 1;
end;
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
CREATE TRIGGER unit_change_is_append_only before update on unit_change
begin select raise(abort, 'changes of units are append-only'); end;
-- 
CREATE TRIGGER unit_change_is_kept before delete on unit_change
when not exists (select 1 from setting where name = 'demo')
begin select raise(abort, 'changes of units are append-only'); end;
-- 
CREATE TRIGGER photo_is_kept before delete on photo
when not exists (select 1 from setting where name = 'demo')
begin select raise(abort, 'photos are taken out, not deleted'); end;
-- 
CREATE TRIGGER journal_is_append_only before update on journal
begin select raise(abort, 'the journal is append-only'); end;
-- 
CREATE TRIGGER journal_is_kept before delete on journal
begin select raise(abort, 'the journal is append-only'); end;
-- 
CREATE TRIGGER person_is_kept before delete on person
begin select raise(abort, 'people are closed, not removed'); end;
-- 
CREATE TRIGGER journal_business_added after insert on business
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'business', new.id, null, 'added', null, null); end;
-- 
CREATE TRIGGER journal_business_changed after update on business when old.id is not new.id or old.name is not new.name or old.address is not new.address or old.telephone is not new.telephone or old.licence_number is not new.licence_number or old.logo_type is not new.logo_type or old.logo is not new.logo
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'business', old.id, null, 'changed', (select json_group_object(k, v) from (select 'id' as k, old.id as v where old.id is not new.id union all select 'name' as k, old.name as v where old.name is not new.name union all select 'address' as k, old.address as v where old.address is not new.address union all select 'telephone' as k, old.telephone as v where old.telephone is not new.telephone union all select 'licence_number' as k, old.licence_number as v where old.licence_number is not new.licence_number union all select 'logo_type' as k, old.logo_type as v where old.logo_type is not new.logo_type union all select 'logo' as k, length(old.logo) || ' bytes' as v where old.logo is not new.logo)), (select json_group_object(k, v) from (select 'id' as k, new.id as v where old.id is not new.id union all select 'name' as k, new.name as v where old.name is not new.name union all select 'address' as k, new.address as v where old.address is not new.address union all select 'telephone' as k, new.telephone as v where old.telephone is not new.telephone union all select 'licence_number' as k, new.licence_number as v where old.licence_number is not new.licence_number union all select 'logo_type' as k, new.logo_type as v where old.logo_type is not new.logo_type union all select 'logo' as k, length(new.logo) || ' bytes' as v where old.logo is not new.logo))); end;
-- 
CREATE TRIGGER journal_business_removed after delete on business
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'business', old.id, null, 'removed', (select json_group_object(k, v) from (select 'id' as k, old.id as v union all select 'name' as k, old.name as v union all select 'address' as k, old.address as v union all select 'telephone' as k, old.telephone as v union all select 'licence_number' as k, old.licence_number as v union all select 'logo_type' as k, old.logo_type as v union all select 'logo' as k, length(old.logo) || ' bytes' as v)), null); end;
-- 
CREATE TRIGGER journal_depot_added after insert on depot
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'depot', new.name, null, 'added', null, null); end;
-- 
CREATE TRIGGER journal_depot_changed after update on depot when old.name is not new.name or old.altitude_m is not new.altitude_m or old.time_zone is not new.time_zone or old.climate is not new.climate
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'depot', old.name, null, 'changed', (select json_group_object(k, v) from (select 'name' as k, old.name as v where old.name is not new.name union all select 'altitude_m' as k, old.altitude_m as v where old.altitude_m is not new.altitude_m union all select 'time_zone' as k, old.time_zone as v where old.time_zone is not new.time_zone union all select 'climate' as k, old.climate as v where old.climate is not new.climate)), (select json_group_object(k, v) from (select 'name' as k, new.name as v where old.name is not new.name union all select 'altitude_m' as k, new.altitude_m as v where old.altitude_m is not new.altitude_m union all select 'time_zone' as k, new.time_zone as v where old.time_zone is not new.time_zone union all select 'climate' as k, new.climate as v where old.climate is not new.climate))); end;
-- 
CREATE TRIGGER journal_depot_removed after delete on depot
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'depot', old.name, null, 'removed', (select json_group_object(k, v) from (select 'name' as k, old.name as v union all select 'altitude_m' as k, old.altitude_m as v union all select 'time_zone' as k, old.time_zone as v union all select 'climate' as k, old.climate as v)), null); end;
-- 
CREATE TRIGGER journal_file_form_added after insert on file_form
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'file_form', new.header, null, 'added', null, null); end;
-- 
CREATE TRIGGER journal_file_form_changed after update on file_form when old.header is not new.header or old.columns is not new.columns or old.answers is not new.answers or old.said_by is not new.said_by
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'file_form', old.header, null, 'changed', (select json_group_object(k, v) from (select 'header' as k, old.header as v where old.header is not new.header union all select 'columns' as k, old.columns as v where old.columns is not new.columns union all select 'answers' as k, old.answers as v where old.answers is not new.answers union all select 'said_by' as k, old.said_by as v where old.said_by is not new.said_by)), (select json_group_object(k, v) from (select 'header' as k, new.header as v where old.header is not new.header union all select 'columns' as k, new.columns as v where old.columns is not new.columns union all select 'answers' as k, new.answers as v where old.answers is not new.answers union all select 'said_by' as k, new.said_by as v where old.said_by is not new.said_by))); end;
-- 
CREATE TRIGGER journal_file_form_removed after delete on file_form
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'file_form', old.header, null, 'removed', (select json_group_object(k, v) from (select 'header' as k, old.header as v union all select 'columns' as k, old.columns as v union all select 'answers' as k, old.answers as v union all select 'said_by' as k, old.said_by as v)), null); end;
-- 
CREATE TRIGGER journal_person_added after insert on person
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'person', new.id, null, 'added', null, null); end;
-- 
CREATE TRIGGER journal_person_changed after update on person when old.id is not new.id or old.name is not new.name or old.name_key is not new.name_key or old.role is not new.role or old.depots is not new.depots or old.password_hash is not new.password_hash or old.active is not new.active
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'person', old.id, null, 'changed', (select json_group_object(k, v) from (select 'id' as k, old.id as v where old.id is not new.id union all select 'name' as k, old.name as v where old.name is not new.name union all select 'name_key' as k, old.name_key as v where old.name_key is not new.name_key union all select 'role' as k, old.role as v where old.role is not new.role union all select 'depots' as k, old.depots as v where old.depots is not new.depots union all select 'password_hash' as k, '(secret)' as v where old.password_hash is not new.password_hash union all select 'active' as k, old.active as v where old.active is not new.active)), (select json_group_object(k, v) from (select 'id' as k, new.id as v where old.id is not new.id union all select 'name' as k, new.name as v where old.name is not new.name union all select 'name_key' as k, new.name_key as v where old.name_key is not new.name_key union all select 'role' as k, new.role as v where old.role is not new.role union all select 'depots' as k, new.depots as v where old.depots is not new.depots union all select 'password_hash' as k, '(secret)' as v where old.password_hash is not new.password_hash union all select 'active' as k, new.active as v where old.active is not new.active))); end;
-- 
CREATE TRIGGER journal_person_removed after delete on person
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'person', old.id, null, 'removed', (select json_group_object(k, v) from (select 'id' as k, old.id as v union all select 'name' as k, old.name as v union all select 'name_key' as k, old.name_key as v union all select 'role' as k, old.role as v union all select 'depots' as k, old.depots as v union all select 'password_hash' as k, '(secret)' as v union all select 'active' as k, old.active as v)), null); end;
-- 
CREATE TRIGGER journal_photo_added after insert on photo
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'photo', new.id, null, 'added', null, null); end;
-- 
CREATE TRIGGER journal_photo_changed after update on photo when old.id is not new.id or old.visit_id is not new.visit_id or old.subject is not new.subject or old.content_type is not new.content_type or old.received_at_ms is not new.received_at_ms or old.saved_by is not new.saved_by or old.bytes is not new.bytes or old.removed_by is not new.removed_by or old.removed_at_ms is not new.removed_at_ms or old.removal_reason is not new.removal_reason
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'photo', old.id, null, 'changed', (select json_group_object(k, v) from (select 'id' as k, old.id as v where old.id is not new.id union all select 'visit_id' as k, old.visit_id as v where old.visit_id is not new.visit_id union all select 'subject' as k, old.subject as v where old.subject is not new.subject union all select 'content_type' as k, old.content_type as v where old.content_type is not new.content_type union all select 'received_at_ms' as k, old.received_at_ms as v where old.received_at_ms is not new.received_at_ms union all select 'saved_by' as k, old.saved_by as v where old.saved_by is not new.saved_by union all select 'bytes' as k, length(old.bytes) || ' bytes' as v where old.bytes is not new.bytes union all select 'removed_by' as k, old.removed_by as v where old.removed_by is not new.removed_by union all select 'removed_at_ms' as k, old.removed_at_ms as v where old.removed_at_ms is not new.removed_at_ms union all select 'removal_reason' as k, old.removal_reason as v where old.removal_reason is not new.removal_reason)), (select json_group_object(k, v) from (select 'id' as k, new.id as v where old.id is not new.id union all select 'visit_id' as k, new.visit_id as v where old.visit_id is not new.visit_id union all select 'subject' as k, new.subject as v where old.subject is not new.subject union all select 'content_type' as k, new.content_type as v where old.content_type is not new.content_type union all select 'received_at_ms' as k, new.received_at_ms as v where old.received_at_ms is not new.received_at_ms union all select 'saved_by' as k, new.saved_by as v where old.saved_by is not new.saved_by union all select 'bytes' as k, length(new.bytes) || ' bytes' as v where old.bytes is not new.bytes union all select 'removed_by' as k, new.removed_by as v where old.removed_by is not new.removed_by union all select 'removed_at_ms' as k, new.removed_at_ms as v where old.removed_at_ms is not new.removed_at_ms union all select 'removal_reason' as k, new.removal_reason as v where old.removal_reason is not new.removal_reason))); end;
-- 
CREATE TRIGGER journal_photo_removed after delete on photo
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'photo', old.id, null, 'removed', (select json_group_object(k, v) from (select 'id' as k, old.id as v union all select 'visit_id' as k, old.visit_id as v union all select 'subject' as k, old.subject as v union all select 'content_type' as k, old.content_type as v union all select 'received_at_ms' as k, old.received_at_ms as v union all select 'saved_by' as k, old.saved_by as v union all select 'bytes' as k, length(old.bytes) || ' bytes' as v union all select 'removed_by' as k, old.removed_by as v union all select 'removed_at_ms' as k, old.removed_at_ms as v union all select 'removal_reason' as k, old.removal_reason as v)), null); end;
-- 
CREATE TRIGGER journal_planned_work_added after insert on planned_work
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'planned_work', new.id, new.unit_id, 'added', null, null); end;
-- 
CREATE TRIGGER journal_planned_work_changed after update on planned_work when old.id is not new.id or old.unit_id is not new.unit_id or old.works is not new.works or old.planned_for is not new.planned_for or old.price_minor is not new.price_minor or old.currency is not new.currency or old.note is not new.note or old.planned_by is not new.planned_by or old.planned_at_ms is not new.planned_at_ms or old.ended_as is not new.ended_as or old.ended_by is not new.ended_by or old.ended_at_ms is not new.ended_at_ms
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'planned_work', old.id, old.unit_id, 'changed', (select json_group_object(k, v) from (select 'id' as k, old.id as v where old.id is not new.id union all select 'unit_id' as k, old.unit_id as v where old.unit_id is not new.unit_id union all select 'works' as k, old.works as v where old.works is not new.works union all select 'planned_for' as k, old.planned_for as v where old.planned_for is not new.planned_for union all select 'price_minor' as k, old.price_minor as v where old.price_minor is not new.price_minor union all select 'currency' as k, old.currency as v where old.currency is not new.currency union all select 'note' as k, old.note as v where old.note is not new.note union all select 'planned_by' as k, old.planned_by as v where old.planned_by is not new.planned_by union all select 'planned_at_ms' as k, old.planned_at_ms as v where old.planned_at_ms is not new.planned_at_ms union all select 'ended_as' as k, old.ended_as as v where old.ended_as is not new.ended_as union all select 'ended_by' as k, old.ended_by as v where old.ended_by is not new.ended_by union all select 'ended_at_ms' as k, old.ended_at_ms as v where old.ended_at_ms is not new.ended_at_ms)), (select json_group_object(k, v) from (select 'id' as k, new.id as v where old.id is not new.id union all select 'unit_id' as k, new.unit_id as v where old.unit_id is not new.unit_id union all select 'works' as k, new.works as v where old.works is not new.works union all select 'planned_for' as k, new.planned_for as v where old.planned_for is not new.planned_for union all select 'price_minor' as k, new.price_minor as v where old.price_minor is not new.price_minor union all select 'currency' as k, new.currency as v where old.currency is not new.currency union all select 'note' as k, new.note as v where old.note is not new.note union all select 'planned_by' as k, new.planned_by as v where old.planned_by is not new.planned_by union all select 'planned_at_ms' as k, new.planned_at_ms as v where old.planned_at_ms is not new.planned_at_ms union all select 'ended_as' as k, new.ended_as as v where old.ended_as is not new.ended_as union all select 'ended_by' as k, new.ended_by as v where old.ended_by is not new.ended_by union all select 'ended_at_ms' as k, new.ended_at_ms as v where old.ended_at_ms is not new.ended_at_ms))); end;
-- 
CREATE TRIGGER journal_planned_work_removed after delete on planned_work
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'planned_work', old.id, old.unit_id, 'removed', (select json_group_object(k, v) from (select 'id' as k, old.id as v union all select 'unit_id' as k, old.unit_id as v union all select 'works' as k, old.works as v union all select 'planned_for' as k, old.planned_for as v union all select 'price_minor' as k, old.price_minor as v union all select 'currency' as k, old.currency as v union all select 'note' as k, old.note as v union all select 'planned_by' as k, old.planned_by as v union all select 'planned_at_ms' as k, old.planned_at_ms as v union all select 'ended_as' as k, old.ended_as as v union all select 'ended_by' as k, old.ended_by as v union all select 'ended_at_ms' as k, old.ended_at_ms as v)), null); end;
-- 
CREATE TRIGGER journal_price_added after insert on price
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'price', new.scope || '/' || new.name || '/' || new.figure, null, 'added', null, null); end;
-- 
CREATE TRIGGER journal_price_changed after update on price when old.scope is not new.scope or old.name is not new.name or old.figure is not new.figure or old.amount is not new.amount
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'price', old.scope || '/' || old.name || '/' || old.figure, null, 'changed', (select json_group_object(k, v) from (select 'scope' as k, old.scope as v where old.scope is not new.scope union all select 'name' as k, old.name as v where old.name is not new.name union all select 'figure' as k, old.figure as v where old.figure is not new.figure union all select 'amount' as k, old.amount as v where old.amount is not new.amount)), (select json_group_object(k, v) from (select 'scope' as k, new.scope as v where old.scope is not new.scope union all select 'name' as k, new.name as v where old.name is not new.name union all select 'figure' as k, new.figure as v where old.figure is not new.figure union all select 'amount' as k, new.amount as v where old.amount is not new.amount))); end;
-- 
CREATE TRIGGER journal_price_removed after delete on price
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'price', old.scope || '/' || old.name || '/' || old.figure, null, 'removed', (select json_group_object(k, v) from (select 'scope' as k, old.scope as v union all select 'name' as k, old.name as v union all select 'figure' as k, old.figure as v union all select 'amount' as k, old.amount as v)), null); end;
-- 
CREATE TRIGGER journal_program_added after insert on program
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'program', new.id, null, 'added', null, null); end;
-- 
CREATE TRIGGER journal_program_changed after update on program when old.id is not new.id or old.secret_hash is not new.secret_hash or old.person_id is not new.person_id or old.name is not new.name or old.most is not new.most or old.depots is not new.depots or old.made_at_ms is not new.made_at_ms or old.ends_at_ms is not new.ends_at_ms
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'program', old.id, null, 'changed', (select json_group_object(k, v) from (select 'id' as k, old.id as v where old.id is not new.id union all select 'secret_hash' as k, '(secret)' as v where old.secret_hash is not new.secret_hash union all select 'person_id' as k, old.person_id as v where old.person_id is not new.person_id union all select 'name' as k, old.name as v where old.name is not new.name union all select 'most' as k, old.most as v where old.most is not new.most union all select 'depots' as k, old.depots as v where old.depots is not new.depots union all select 'made_at_ms' as k, old.made_at_ms as v where old.made_at_ms is not new.made_at_ms union all select 'ends_at_ms' as k, old.ends_at_ms as v where old.ends_at_ms is not new.ends_at_ms)), (select json_group_object(k, v) from (select 'id' as k, new.id as v where old.id is not new.id union all select 'secret_hash' as k, '(secret)' as v where old.secret_hash is not new.secret_hash union all select 'person_id' as k, new.person_id as v where old.person_id is not new.person_id union all select 'name' as k, new.name as v where old.name is not new.name union all select 'most' as k, new.most as v where old.most is not new.most union all select 'depots' as k, new.depots as v where old.depots is not new.depots union all select 'made_at_ms' as k, new.made_at_ms as v where old.made_at_ms is not new.made_at_ms union all select 'ends_at_ms' as k, new.ends_at_ms as v where old.ends_at_ms is not new.ends_at_ms))); end;
-- 
CREATE TRIGGER journal_program_removed after delete on program
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'program', old.id, null, 'removed', (select json_group_object(k, v) from (select 'id' as k, old.id as v union all select 'secret_hash' as k, '(secret)' as v union all select 'person_id' as k, old.person_id as v union all select 'name' as k, old.name as v union all select 'most' as k, old.most as v union all select 'depots' as k, old.depots as v union all select 'made_at_ms' as k, old.made_at_ms as v union all select 'ends_at_ms' as k, old.ends_at_ms as v union all select 'used_at_ms' as k, old.used_at_ms as v)), null); end;
-- 
CREATE TRIGGER journal_quote_added after insert on quote
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'quote', new.unit_id, new.unit_id, 'added', null, null); end;
-- 
CREATE TRIGGER journal_quote_changed after update on quote when old.unit_id is not new.unit_id or old.work is not new.work or old.price_minor is not new.price_minor or old.currency is not new.currency or old.offered_by is not new.offered_by or old.offered_on is not new.offered_on
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'quote', old.unit_id, old.unit_id, 'changed', (select json_group_object(k, v) from (select 'unit_id' as k, old.unit_id as v where old.unit_id is not new.unit_id union all select 'work' as k, old.work as v where old.work is not new.work union all select 'price_minor' as k, old.price_minor as v where old.price_minor is not new.price_minor union all select 'currency' as k, old.currency as v where old.currency is not new.currency union all select 'offered_by' as k, old.offered_by as v where old.offered_by is not new.offered_by union all select 'offered_on' as k, old.offered_on as v where old.offered_on is not new.offered_on)), (select json_group_object(k, v) from (select 'unit_id' as k, new.unit_id as v where old.unit_id is not new.unit_id union all select 'work' as k, new.work as v where old.work is not new.work union all select 'price_minor' as k, new.price_minor as v where old.price_minor is not new.price_minor union all select 'currency' as k, new.currency as v where old.currency is not new.currency union all select 'offered_by' as k, new.offered_by as v where old.offered_by is not new.offered_by union all select 'offered_on' as k, new.offered_on as v where old.offered_on is not new.offered_on))); end;
-- 
CREATE TRIGGER journal_quote_removed after delete on quote
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'quote', old.unit_id, old.unit_id, 'removed', (select json_group_object(k, v) from (select 'unit_id' as k, old.unit_id as v union all select 'work' as k, old.work as v union all select 'price_minor' as k, old.price_minor as v union all select 'currency' as k, old.currency as v union all select 'offered_by' as k, old.offered_by as v union all select 'offered_on' as k, old.offered_on as v)), null); end;
-- 
CREATE TRIGGER journal_setting_added after insert on setting when new.name not in ('generation', 'closed_through')
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'setting', new.name, null, 'added', null, null); end;
-- 
CREATE TRIGGER journal_setting_changed after update on setting when (old.name is not new.name or old.content is not new.content) and new.name not in ('generation', 'closed_through')
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'setting', old.name, null, 'changed', (select json_group_object(k, v) from (select 'name' as k, old.name as v where old.name is not new.name union all select 'content' as k, old.content as v where old.content is not new.content)), (select json_group_object(k, v) from (select 'name' as k, new.name as v where old.name is not new.name union all select 'content' as k, new.content as v where old.content is not new.content))); end;
-- 
CREATE TRIGGER journal_setting_removed after delete on setting when old.name not in ('generation', 'closed_through')
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'setting', old.name, null, 'removed', (select json_group_object(k, v) from (select 'name' as k, old.name as v union all select 'content' as k, old.content as v)), null); end;
-- 
CREATE TRIGGER journal_sheet_link_added after insert on sheet_link
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'sheet_link', new.id, new.unit_id, 'added', null, null); end;
-- 
CREATE TRIGGER journal_sheet_link_changed after update on sheet_link when old.id is not new.id or old.secret_hash is not new.secret_hash or old.unit_id is not new.unit_id or old.made_by is not new.made_by or old.made_at_ms is not new.made_at_ms or old.ends_at_ms is not new.ends_at_ms or old.withdrawn_at_ms is not new.withdrawn_at_ms
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'sheet_link', old.id, old.unit_id, 'changed', (select json_group_object(k, v) from (select 'id' as k, old.id as v where old.id is not new.id union all select 'secret_hash' as k, '(secret)' as v where old.secret_hash is not new.secret_hash union all select 'unit_id' as k, old.unit_id as v where old.unit_id is not new.unit_id union all select 'made_by' as k, old.made_by as v where old.made_by is not new.made_by union all select 'made_at_ms' as k, old.made_at_ms as v where old.made_at_ms is not new.made_at_ms union all select 'ends_at_ms' as k, old.ends_at_ms as v where old.ends_at_ms is not new.ends_at_ms union all select 'withdrawn_at_ms' as k, old.withdrawn_at_ms as v where old.withdrawn_at_ms is not new.withdrawn_at_ms)), (select json_group_object(k, v) from (select 'id' as k, new.id as v where old.id is not new.id union all select 'secret_hash' as k, '(secret)' as v where old.secret_hash is not new.secret_hash union all select 'unit_id' as k, new.unit_id as v where old.unit_id is not new.unit_id union all select 'made_by' as k, new.made_by as v where old.made_by is not new.made_by union all select 'made_at_ms' as k, new.made_at_ms as v where old.made_at_ms is not new.made_at_ms union all select 'ends_at_ms' as k, new.ends_at_ms as v where old.ends_at_ms is not new.ends_at_ms union all select 'withdrawn_at_ms' as k, new.withdrawn_at_ms as v where old.withdrawn_at_ms is not new.withdrawn_at_ms))); end;
-- 
CREATE TRIGGER journal_sheet_link_removed after delete on sheet_link
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'sheet_link', old.id, old.unit_id, 'removed', (select json_group_object(k, v) from (select 'id' as k, old.id as v union all select 'secret_hash' as k, '(secret)' as v union all select 'unit_id' as k, old.unit_id as v union all select 'made_by' as k, old.made_by as v union all select 'made_at_ms' as k, old.made_at_ms as v union all select 'ends_at_ms' as k, old.ends_at_ms as v union all select 'withdrawn_at_ms' as k, old.withdrawn_at_ms as v)), null); end;
-- 
CREATE TRIGGER journal_stand_added after insert on stand
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'stand', new.unit_id, new.unit_id, 'added', null, null); end;
-- 
CREATE TRIGGER journal_stand_changed after update on stand when old.unit_id is not new.unit_id or old.stand_row is not new.stand_row or old.stand_place is not new.stand_place
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'stand', old.unit_id, old.unit_id, 'changed', (select json_group_object(k, v) from (select 'unit_id' as k, old.unit_id as v where old.unit_id is not new.unit_id union all select 'stand_row' as k, old.stand_row as v where old.stand_row is not new.stand_row union all select 'stand_place' as k, old.stand_place as v where old.stand_place is not new.stand_place)), (select json_group_object(k, v) from (select 'unit_id' as k, new.unit_id as v where old.unit_id is not new.unit_id union all select 'stand_row' as k, new.stand_row as v where old.stand_row is not new.stand_row union all select 'stand_place' as k, new.stand_place as v where old.stand_place is not new.stand_place))); end;
-- 
CREATE TRIGGER journal_stand_removed after delete on stand
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'stand', old.unit_id, old.unit_id, 'removed', (select json_group_object(k, v) from (select 'unit_id' as k, old.unit_id as v union all select 'stand_row' as k, old.stand_row as v union all select 'stand_place' as k, old.stand_place as v)), null); end;
-- 
CREATE TRIGGER journal_technician_added after insert on technician
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'technician', new.name, null, 'added', null, null); end;
-- 
CREATE TRIGGER journal_technician_changed after update on technician when old.name is not new.name or old.thermometer_kind is not new.thermometer_kind or old.ambient_thermometer_kind is not new.ambient_thermometer_kind or old.hygrometer_kind is not new.hygrometer_kind or old.clamp_kind is not new.clamp_kind or old.voltmeter_kind is not new.voltmeter_kind or old.probe_u_k is not new.probe_u_k or old.ambient_probe_u_k is not new.ambient_probe_u_k or old.humidity_u is not new.humidity_u or old.clamp_relative_u is not new.clamp_relative_u or old.clamp_floor_u_a is not new.clamp_floor_u_a or old.voltage_u_v is not new.voltage_u_v
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'technician', old.name, null, 'changed', (select json_group_object(k, v) from (select 'name' as k, old.name as v where old.name is not new.name union all select 'thermometer_kind' as k, old.thermometer_kind as v where old.thermometer_kind is not new.thermometer_kind union all select 'ambient_thermometer_kind' as k, old.ambient_thermometer_kind as v where old.ambient_thermometer_kind is not new.ambient_thermometer_kind union all select 'hygrometer_kind' as k, old.hygrometer_kind as v where old.hygrometer_kind is not new.hygrometer_kind union all select 'clamp_kind' as k, old.clamp_kind as v where old.clamp_kind is not new.clamp_kind union all select 'voltmeter_kind' as k, old.voltmeter_kind as v where old.voltmeter_kind is not new.voltmeter_kind union all select 'probe_u_k' as k, old.probe_u_k as v where old.probe_u_k is not new.probe_u_k union all select 'ambient_probe_u_k' as k, old.ambient_probe_u_k as v where old.ambient_probe_u_k is not new.ambient_probe_u_k union all select 'humidity_u' as k, old.humidity_u as v where old.humidity_u is not new.humidity_u union all select 'clamp_relative_u' as k, old.clamp_relative_u as v where old.clamp_relative_u is not new.clamp_relative_u union all select 'clamp_floor_u_a' as k, old.clamp_floor_u_a as v where old.clamp_floor_u_a is not new.clamp_floor_u_a union all select 'voltage_u_v' as k, old.voltage_u_v as v where old.voltage_u_v is not new.voltage_u_v)), (select json_group_object(k, v) from (select 'name' as k, new.name as v where old.name is not new.name union all select 'thermometer_kind' as k, new.thermometer_kind as v where old.thermometer_kind is not new.thermometer_kind union all select 'ambient_thermometer_kind' as k, new.ambient_thermometer_kind as v where old.ambient_thermometer_kind is not new.ambient_thermometer_kind union all select 'hygrometer_kind' as k, new.hygrometer_kind as v where old.hygrometer_kind is not new.hygrometer_kind union all select 'clamp_kind' as k, new.clamp_kind as v where old.clamp_kind is not new.clamp_kind union all select 'voltmeter_kind' as k, new.voltmeter_kind as v where old.voltmeter_kind is not new.voltmeter_kind union all select 'probe_u_k' as k, new.probe_u_k as v where old.probe_u_k is not new.probe_u_k union all select 'ambient_probe_u_k' as k, new.ambient_probe_u_k as v where old.ambient_probe_u_k is not new.ambient_probe_u_k union all select 'humidity_u' as k, new.humidity_u as v where old.humidity_u is not new.humidity_u union all select 'clamp_relative_u' as k, new.clamp_relative_u as v where old.clamp_relative_u is not new.clamp_relative_u union all select 'clamp_floor_u_a' as k, new.clamp_floor_u_a as v where old.clamp_floor_u_a is not new.clamp_floor_u_a union all select 'voltage_u_v' as k, new.voltage_u_v as v where old.voltage_u_v is not new.voltage_u_v))); end;
-- 
CREATE TRIGGER journal_technician_removed after delete on technician
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'technician', old.name, null, 'removed', (select json_group_object(k, v) from (select 'name' as k, old.name as v union all select 'thermometer_kind' as k, old.thermometer_kind as v union all select 'ambient_thermometer_kind' as k, old.ambient_thermometer_kind as v union all select 'hygrometer_kind' as k, old.hygrometer_kind as v union all select 'clamp_kind' as k, old.clamp_kind as v union all select 'voltmeter_kind' as k, old.voltmeter_kind as v union all select 'probe_u_k' as k, old.probe_u_k as v union all select 'ambient_probe_u_k' as k, old.ambient_probe_u_k as v union all select 'humidity_u' as k, old.humidity_u as v union all select 'clamp_relative_u' as k, old.clamp_relative_u as v union all select 'clamp_floor_u_a' as k, old.clamp_floor_u_a as v union all select 'voltage_u_v' as k, old.voltage_u_v as v)), null); end;
-- 
CREATE TRIGGER journal_unit_added after insert on unit
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'unit', new.id, new.id, 'added', null, null); end;
-- 
CREATE TRIGGER journal_unit_changed after update on unit when old.id is not new.id or old.label is not new.label or old.depot is not new.depot or old.nominal_capacity_w is not new.nominal_capacity_w or old.refrigerant is not new.refrigerant or old.rated_amps_a is not new.rated_amps_a or old.rated_amps_kind is not new.rated_amps_kind or old.rated_volts_v is not new.rated_volts_v or old.variable_speed is not new.variable_speed or old.soft_starter is not new.soft_starter or old.capacitor_label_uf is not new.capacitor_label_uf or old.air_delivery is not new.air_delivery or old.installed_on is not new.installed_on or old.altitude_m is not new.altitude_m or old.make is not new.make or old.model is not new.model or old.serial is not new.serial or old.serial_key is not new.serial_key or old.vehicle is not new.vehicle or old.roof_position is not new.roof_position or old.owner is not new.owner or old.warranty_until is not new.warranty_until or old.duty is not new.duty
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'unit', old.id, old.id, 'changed', (select json_group_object(k, v) from (select 'id' as k, old.id as v where old.id is not new.id union all select 'label' as k, old.label as v where old.label is not new.label union all select 'depot' as k, old.depot as v where old.depot is not new.depot union all select 'nominal_capacity_w' as k, old.nominal_capacity_w as v where old.nominal_capacity_w is not new.nominal_capacity_w union all select 'refrigerant' as k, old.refrigerant as v where old.refrigerant is not new.refrigerant union all select 'rated_amps_a' as k, old.rated_amps_a as v where old.rated_amps_a is not new.rated_amps_a union all select 'rated_amps_kind' as k, old.rated_amps_kind as v where old.rated_amps_kind is not new.rated_amps_kind union all select 'rated_volts_v' as k, old.rated_volts_v as v where old.rated_volts_v is not new.rated_volts_v union all select 'variable_speed' as k, old.variable_speed as v where old.variable_speed is not new.variable_speed union all select 'soft_starter' as k, old.soft_starter as v where old.soft_starter is not new.soft_starter union all select 'capacitor_label_uf' as k, old.capacitor_label_uf as v where old.capacitor_label_uf is not new.capacitor_label_uf union all select 'air_delivery' as k, old.air_delivery as v where old.air_delivery is not new.air_delivery union all select 'installed_on' as k, old.installed_on as v where old.installed_on is not new.installed_on union all select 'altitude_m' as k, old.altitude_m as v where old.altitude_m is not new.altitude_m union all select 'make' as k, old.make as v where old.make is not new.make union all select 'model' as k, old.model as v where old.model is not new.model union all select 'serial' as k, old.serial as v where old.serial is not new.serial union all select 'serial_key' as k, old.serial_key as v where old.serial_key is not new.serial_key union all select 'vehicle' as k, old.vehicle as v where old.vehicle is not new.vehicle union all select 'roof_position' as k, old.roof_position as v where old.roof_position is not new.roof_position union all select 'owner' as k, old.owner as v where old.owner is not new.owner union all select 'warranty_until' as k, old.warranty_until as v where old.warranty_until is not new.warranty_until union all select 'duty' as k, old.duty as v where old.duty is not new.duty)), (select json_group_object(k, v) from (select 'id' as k, new.id as v where old.id is not new.id union all select 'label' as k, new.label as v where old.label is not new.label union all select 'depot' as k, new.depot as v where old.depot is not new.depot union all select 'nominal_capacity_w' as k, new.nominal_capacity_w as v where old.nominal_capacity_w is not new.nominal_capacity_w union all select 'refrigerant' as k, new.refrigerant as v where old.refrigerant is not new.refrigerant union all select 'rated_amps_a' as k, new.rated_amps_a as v where old.rated_amps_a is not new.rated_amps_a union all select 'rated_amps_kind' as k, new.rated_amps_kind as v where old.rated_amps_kind is not new.rated_amps_kind union all select 'rated_volts_v' as k, new.rated_volts_v as v where old.rated_volts_v is not new.rated_volts_v union all select 'variable_speed' as k, new.variable_speed as v where old.variable_speed is not new.variable_speed union all select 'soft_starter' as k, new.soft_starter as v where old.soft_starter is not new.soft_starter union all select 'capacitor_label_uf' as k, new.capacitor_label_uf as v where old.capacitor_label_uf is not new.capacitor_label_uf union all select 'air_delivery' as k, new.air_delivery as v where old.air_delivery is not new.air_delivery union all select 'installed_on' as k, new.installed_on as v where old.installed_on is not new.installed_on union all select 'altitude_m' as k, new.altitude_m as v where old.altitude_m is not new.altitude_m union all select 'make' as k, new.make as v where old.make is not new.make union all select 'model' as k, new.model as v where old.model is not new.model union all select 'serial' as k, new.serial as v where old.serial is not new.serial union all select 'serial_key' as k, new.serial_key as v where old.serial_key is not new.serial_key union all select 'vehicle' as k, new.vehicle as v where old.vehicle is not new.vehicle union all select 'roof_position' as k, new.roof_position as v where old.roof_position is not new.roof_position union all select 'owner' as k, new.owner as v where old.owner is not new.owner union all select 'warranty_until' as k, new.warranty_until as v where old.warranty_until is not new.warranty_until union all select 'duty' as k, new.duty as v where old.duty is not new.duty))); end;
-- 
CREATE TRIGGER journal_unit_removed after delete on unit
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'unit', old.id, old.id, 'removed', (select json_group_object(k, v) from (select 'id' as k, old.id as v union all select 'label' as k, old.label as v union all select 'depot' as k, old.depot as v union all select 'nominal_capacity_w' as k, old.nominal_capacity_w as v union all select 'refrigerant' as k, old.refrigerant as v union all select 'rated_amps_a' as k, old.rated_amps_a as v union all select 'rated_amps_kind' as k, old.rated_amps_kind as v union all select 'rated_volts_v' as k, old.rated_volts_v as v union all select 'variable_speed' as k, old.variable_speed as v union all select 'soft_starter' as k, old.soft_starter as v union all select 'capacitor_label_uf' as k, old.capacitor_label_uf as v union all select 'air_delivery' as k, old.air_delivery as v union all select 'installed_on' as k, old.installed_on as v union all select 'altitude_m' as k, old.altitude_m as v union all select 'make' as k, old.make as v union all select 'model' as k, old.model as v union all select 'serial' as k, old.serial as v union all select 'serial_key' as k, old.serial_key as v union all select 'vehicle' as k, old.vehicle as v union all select 'roof_position' as k, old.roof_position as v union all select 'owner' as k, old.owner as v union all select 'warranty_until' as k, old.warranty_until as v union all select 'duty' as k, old.duty as v)), null); end;
-- 
CREATE TRIGGER journal_visit_round_added after insert on visit_round
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'visit_round', new.id, null, 'added', null, null); end;
-- 
CREATE TRIGGER journal_visit_round_changed after update on visit_round when old.id is not new.id or old.title is not new.title or old.for_day is not new.for_day or old.made_by is not new.made_by or old.made_at_ms is not new.made_at_ms
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'visit_round', old.id, null, 'changed', (select json_group_object(k, v) from (select 'id' as k, old.id as v where old.id is not new.id union all select 'title' as k, old.title as v where old.title is not new.title union all select 'for_day' as k, old.for_day as v where old.for_day is not new.for_day union all select 'made_by' as k, old.made_by as v where old.made_by is not new.made_by union all select 'made_at_ms' as k, old.made_at_ms as v where old.made_at_ms is not new.made_at_ms)), (select json_group_object(k, v) from (select 'id' as k, new.id as v where old.id is not new.id union all select 'title' as k, new.title as v where old.title is not new.title union all select 'for_day' as k, new.for_day as v where old.for_day is not new.for_day union all select 'made_by' as k, new.made_by as v where old.made_by is not new.made_by union all select 'made_at_ms' as k, new.made_at_ms as v where old.made_at_ms is not new.made_at_ms))); end;
-- 
CREATE TRIGGER journal_visit_round_removed after delete on visit_round
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'visit_round', old.id, null, 'removed', (select json_group_object(k, v) from (select 'id' as k, old.id as v union all select 'title' as k, old.title as v union all select 'for_day' as k, old.for_day as v union all select 'made_by' as k, old.made_by as v union all select 'made_at_ms' as k, old.made_at_ms as v)), null); end;
-- 
CREATE TRIGGER journal_visit_round_stop_added after insert on visit_round_stop
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'visit_round_stop', new.round_id || '/' || new.unit_id, new.unit_id, 'added', null, null); end;
-- 
CREATE TRIGGER journal_visit_round_stop_changed after update on visit_round_stop when old.round_id is not new.round_id or old.unit_id is not new.unit_id or old.position is not new.position or old.visit_id is not new.visit_id
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'visit_round_stop', old.round_id || '/' || old.unit_id, old.unit_id, 'changed', (select json_group_object(k, v) from (select 'round_id' as k, old.round_id as v where old.round_id is not new.round_id union all select 'unit_id' as k, old.unit_id as v where old.unit_id is not new.unit_id union all select 'position' as k, old.position as v where old.position is not new.position union all select 'visit_id' as k, old.visit_id as v where old.visit_id is not new.visit_id)), (select json_group_object(k, v) from (select 'round_id' as k, new.round_id as v where old.round_id is not new.round_id union all select 'unit_id' as k, new.unit_id as v where old.unit_id is not new.unit_id union all select 'position' as k, new.position as v where old.position is not new.position union all select 'visit_id' as k, new.visit_id as v where old.visit_id is not new.visit_id))); end;
-- 
CREATE TRIGGER journal_visit_round_stop_removed after delete on visit_round_stop
begin insert into journal (at_ms, who, person_id, way, about, about_id, unit_id, event, before_json, after_json)
values (coalesce((select at_ms from acting), cast(strftime('%s', 'now') as integer) * 1000),
coalesce((select who from acting), 'somebody'), (select person_id from acting),
coalesce((select way from acting), 'outside of Longsummer'), 'visit_round_stop', old.round_id || '/' || old.unit_id, old.unit_id, 'removed', (select json_group_object(k, v) from (select 'round_id' as k, old.round_id as v union all select 'unit_id' as k, old.unit_id as v union all select 'position' as k, old.position as v union all select 'visit_id' as k, old.visit_id as v)), null); end;
-- 
