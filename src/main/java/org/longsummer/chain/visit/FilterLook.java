package org.longsummer.chain.visit;

/** The return-air filter as found. */
public enum FilterLook { CLEAN, DIRTY, MISSING, NOT_LOOKED }
