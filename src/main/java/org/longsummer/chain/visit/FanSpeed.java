package org.longsummer.chain.visit;

/** Speed of the blower during the readings. */
public enum FanSpeed { HIGH, LOW, UNKNOWN }
