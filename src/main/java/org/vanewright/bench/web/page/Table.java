package org.vanewright.bench.web.page;

import java.util.List;

/**
 * Results in rows.
 *
 * @param caption what they are, with units
 * @param heads of the columns
 * @param rows as many cells as heads
 */
public record Table(String caption, List<String> heads, List<List<String>> rows) {}
