package org.longsummer.chain.visit;

/** Dirt on the coils as found, the dirtier of the two. */
public enum CoilLook { CLEAN, LIGHT, HEAVY, NOT_LOOKED }
