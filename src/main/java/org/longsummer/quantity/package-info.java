/**
 * Quantities with their units: what is read, computed and said. The only place that knows an offset or a factor of a unit.
 *
 * <p>Kept in SI, made from and turned into what people type. A {@link org.longsummer.quantity.Temperature} is not a
 * {@link org.longsummer.quantity.TemperatureDifference}. {@link org.longsummer.quantity.Decimal} prints numbers for sentences.
 * Knows nothing else of the project. Key source: the definitions of the units themselves (international yard and pound, ITS).
 */
package org.longsummer.quantity;
