/**
 * What is learned across units, closed at the end of each UTC day: class levels, technicians' instruments, slopes of the fleet, months
 * of a site.
 *
 * <p>A verdict uses the last closing before its own day, so that any unit can be judged anywhere from its visits and the closings.
 */
package org.longsummer.chain.learning;
