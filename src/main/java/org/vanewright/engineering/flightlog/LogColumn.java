package org.vanewright.engineering.flightlog;

/**
 * What one column of a table holds.
 *
 * @param quantity what it is
 * @param column its number in the table, from 0
 * @param unit how it is written
 */
public record LogColumn(LogQuantity quantity, int column, LogUnit unit) {}
