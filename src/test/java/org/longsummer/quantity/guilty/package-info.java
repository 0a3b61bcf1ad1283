/** Guilty on purpose: proves that the drawing's arrows are enforced. No part of the product. */
package org.longsummer.quantity.guilty;
