/**
 * What is printed for an owner: one sheet in plain words with two small pictures, the same on a page and as a PDF. Knows the verdicts,
 * what lies ahead and whose paper it is; nothing of HTTP.
 */
package org.longsummer.paper;
