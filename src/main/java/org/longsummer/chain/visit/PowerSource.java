package org.longsummer.chain.visit;

/** Where the power came from. */
public enum PowerSource { SHORE, GENERATOR, INVERTER, UNKNOWN }
