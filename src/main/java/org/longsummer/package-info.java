/**
 * The product. This package holds the command line alone: it reads settings, wires the parts and starts them; nothing is decided here.
 *
 * <p>May know everything. Inside out: {@code quantity}, {@code science}, {@code chain} are pure (no SQL, HTTP, JSON, clock or
 * randomness) and give the same answer on a server and on a phone; {@code store}, {@code files} and {@code web} keep, move and show.
 * The arrows are drawn in {@code reference/architecture.puml}, and a test runs the drawing.
 */
package org.longsummer;
