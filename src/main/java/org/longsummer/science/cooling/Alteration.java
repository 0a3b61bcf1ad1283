package org.longsummer.science.cooling;

/**
 * What a fault changes about a roof unit, in the terms of its physics. Neutral values leave it sound.
 *
 * @param condenserRise by how much hotter the air at the condenser seems, K
 * @param flowRatio evaporator air flow over the sound unit's
 * @param capacityRatio capacity at the coil over the sound unit's, apart from what flow and condenser do
 * @param ampsRatio amps over the sound unit's, apart from what flow and condenser do
 */
public record Alteration(double condenserRise, double flowRatio, double capacityRatio, double ampsRatio) {
    public static final Alteration NONE = new Alteration(0, 1, 1, 1);
}
