/**
 * What the tests share to show their evidence: the reference tables they read, the comparisons they make, and the register that
 * the build renders from them into {@code reference/validation.md}.
 */
package org.longsummer.evidence;
