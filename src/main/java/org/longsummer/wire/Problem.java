package org.longsummer.wire;

/**
 * One thing that keeps a request from being carried out; the shape of every error.
 *
 * @param field the box or parameter; empty when it is about the whole request
 * @param given what was given; empty when nothing was
 * @param limit what is asked for, as a sentence
 * @param remedy what to do, as a sentence
 */
public record Problem(String field, String given, String limit, String remedy) {}
