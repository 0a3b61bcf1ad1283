-- Units of measure are in the columns' names: _k kelvin, _a ampere, _v volt, _m metre, _w watt, _uf microfarad, _min minute,
-- _ms milliseconds since 1970-01-01T00:00Z. Days are text, YYYY-MM-DD. Flags are 0 or 1. Choices are the words of the CSV files;
-- null means not read, not seen or not known.

-- Settings of the store itself: demo (yes), generation (of the closings in force), closed_through (the last UTC day that was closed).
create table setting (
    name text primary key,
    content text not null
);

create table depot (
    name text primary key,
    altitude_m double precision,
    time_zone text
);

create table unit (
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
create index unit_by_depot on unit (depot, id);
create index unit_by_serial_key on unit (serial_key);

create table instruments (
    id bigint primary key,
    probe_u_k double precision not null,
    ambient_probe_u_k double precision not null,
    humidity_u double precision not null,
    clamp_relative_u double precision not null,
    clamp_floor_u_a double precision not null,
    voltage_u_v double precision not null,
    one_probe integer not null
);

-- Append-only. A correction is a new row that names the row it corrects; a withdrawal is a row of its own.
create table visit (
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
create index visit_by_unit on visit (unit_id, visited_at_ms);
create index visit_by_day on visit (day);
create index visit_by_closing on visit (closes_on);

create table withdrawal (
    visit_id text primary key references visit (id),
    withdrawn_by text not null,
    withdrawn_at_ms bigint not null,
    reason text not null
);

-- What each visit that counts was last judged to say; rewritten whenever the unit is judged again.
create table verdict (
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
create index verdict_by_unit on verdict (unit_id, visited_at_ms);

-- One row a unit: what the yard lists. state_rank: 3 act, 2 drifting, 1 never judged, 0 steady.
create table standing (
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
);
create index standing_by_urgency on standing (in_service, state_rank desc, p_impact desc, unit_id);
create index standing_by_depot on standing (depot, state_rank desc, p_impact desc, unit_id);
create index standing_by_last_visit on standing (last_visit_at_ms, unit_id);
create index standing_by_label on standing (label, unit_id);

-- What was learned across units, by the UTC day at whose end it was closed. Append-only: learning anew from the first day on, as
-- after a history was brought in, begins a new generation.
create table closing (
    generation integer not null,
    day text not null,
    learned_key text not null,
    numbers text not null,
    primary key (generation, day, learned_key)
);
