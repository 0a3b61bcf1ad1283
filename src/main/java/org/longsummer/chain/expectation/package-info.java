/**
 * What a sound unit of this class and plate should show in the conditions of a visit, with every influence that makes a reading differ.
 *
 * <p>Merges what was read with what the weather, the place and the season say; knows the visit, its screening and what was learned
 * across units, and asks {@code science.cooling}. Key sources: as there, and [jcgm-100-2008] for the propagation.
 */
package org.longsummer.chain.expectation;
