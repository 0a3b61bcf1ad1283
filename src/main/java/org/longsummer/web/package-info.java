/** Pages and their data over HTTP: the only place that knows HTTP and JSON. */
package org.longsummer.web;
