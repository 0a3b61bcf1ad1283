package org.longsummer.chain.condition;

/**
 * Size of the likeliest fault: what it costs now.
 *
 * @param capacityLost share of the sound unit's capacity that is lost, 0.12 for 12 %
 * @param capacityLostU standard uncertainty of it
 * @param ampsGained share by which amps are above the sound unit's; negative when below
 * @param ampsGainedU standard uncertainty of it
 */
public record Severity(double capacityLost, double capacityLostU, double ampsGained, double ampsGainedU) {}
