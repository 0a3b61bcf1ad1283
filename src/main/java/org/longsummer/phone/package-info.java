/**
 * The core's door for the browser: the same Java, compiled to JavaScript, so that a phone without a signal judges as the server does.
 *
 * <p>It knows the chain and what goes over the wire; it keeps nothing. What the pages may call is marked in {@link
 * org.longsummer.phone.Door} and {@link org.longsummer.phone.OpenedUnit}.
 */
package org.longsummer.phone;
