package org.longsummer.demo;

/** A mistake that an invented technician makes once. */
enum Slip { CELSIUS, SWAPPED, DECIMAL, CLAMP_AROUND_BOTH, CLAMP_AROUND_CORD, SHORT_RUN, FAN_LOW, SAVED_TWICE }
