/**
 * A direct-expansion cooling machine: performance curves measured on window units, a bypass-factor coil, a motor against its voltage,
 * and what published faults do to them.
 *
 * <p>Knows quantities and moist air; knows no visit and no unit of a fleet. Key sources: {@code winkler-2013} (curves),
 * {@code energyplus-dx} (coil), {@code cheung-braun-2015} and {@code domanski-2014} (faults).
 */
package org.longsummer.science.cooling;
