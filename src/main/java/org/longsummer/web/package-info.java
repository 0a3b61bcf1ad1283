/**
 * Pages and their data: the only place that knows HTTP and JSON, and the only one that knows which system of units a reader likes.
 *
 * <p>{@link org.longsummer.web.Routes} is the whole surface on one screen. A handler parses, calls and renders; everything that is
 * refused is answered in one shape, a list of {@link org.longsummer.wire.Problem}s. Numbers leave as {@link org.longsummer.wire.Shown}:
 * number, unit and text together. Sentences about verdicts come from the chain. The pages themselves are static files.
 */
package org.longsummer.web;
