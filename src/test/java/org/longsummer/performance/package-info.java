/**
 * How quick it is: programs that measure, never tests that assert. Each is started by a command that stands in
 * {@code reference/performance.md} beside the figures it gave.
 */
package org.longsummer.performance;
