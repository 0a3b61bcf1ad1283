/**
 * When a unit is to be checked next: by its season, by what its last visit said, and by its filter's age. Practice of the trade and
 * figures of ours; nothing here is measured.
 */
package org.longsummer.chain.due;
