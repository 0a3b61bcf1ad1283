/** The phone's core against the server's: the same words and numbers in a browser's JavaScript as in Java. */
package org.longsummer.phone;
