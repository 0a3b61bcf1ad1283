/**
 * What happens when things go wrong: real processes that are killed, disks that are full, odd input, many people at once.
 *
 * <p>A few rounds of each run in every build; {@code mvn verify -Pendurance} runs many and writes {@code reference/endurance.md}.
 */
package org.longsummer.endurance;
