-- The instruments that a technician carries: their kinds, and their standard uncertainties (columns as in instruments).
create table technician (
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
