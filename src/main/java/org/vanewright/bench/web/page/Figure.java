package org.vanewright.bench.web.page;

/**
 * One result.
 *
 * @param label what it is
 * @param value with its unit
 */
public record Figure(String label, String value) {}
