/** Guilty on purpose: proves that the rules of the house can fail. No part of the product. */
package org.longsummer.chain.guilty;
