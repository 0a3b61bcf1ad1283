-- Whose paper it is: one row at most.
create table business (
    id bigint primary key,
    name text not null,
    address text not null,
    telephone text not null,
    licence_number text not null,
    logo_type text,
    logo blob
);
