/**
 * Measured machines, sound and with a known fault, as the chain judges them. No roof unit has been measured in public; these are the
 * nearest: a heat pump in environmental chambers and a packaged rooftop unit.
 */
package org.longsummer.measured;
