/**
 * What goes over the wire between a server and a page: a form's texts made into units and visits, verdicts and numbers made into what
 * is shown, and the record of a unit as a phone keeps it. Written once; the server and the phone both use it.
 *
 * <p>It knows the core. It is as pure as the core is, since it too is compiled to JavaScript.
 */
package org.longsummer.wire;
