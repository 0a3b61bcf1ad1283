/**
 * When units run: a depot's year as run-hours a day, and a clock that counts seasons of running instead of days. Faults grow and
 * machines wear while they run, so every rate and every hazard of the later stages is per season of running. Knows only the calendar.
 */
package org.longsummer.chain.season;
