/**
 * The log: one line of JSON per event. It is bound to the library by which everything here logs, so that what libraries warn of comes
 * out the same way.
 *
 * <p>Knows nothing of the rest. Events name what happened and how long it took, never what people read, wrote or are called.
 */
package org.longsummer.log;
