package org.longsummer.chain.visit;

/** Dirt on the condenser coil as found. */
public enum CoilLook { CLEAN, LIGHT, HEAVY, NOT_LOOKED }
