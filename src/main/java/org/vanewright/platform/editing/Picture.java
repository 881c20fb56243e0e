package org.vanewright.platform.editing;

/**
 * A drawing of a record.
 *
 * @param title what it shows
 * @param svg inline markup with a text alternative
 */
public record Picture(String title, String svg) {}
