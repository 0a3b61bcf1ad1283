-- Figures of price lists, only what somebody gave: of the whole fleet (scope fleet, name empty), of a depot or of a unit. A figure is a
-- key of the price list with its number in the currency's major unit, or the key currency with its three letters, for the fleet only.
create table price (
    scope text not null,
    name text not null,
    figure text not null,
    amount text not null,
    primary key (scope, name, figure)
);
