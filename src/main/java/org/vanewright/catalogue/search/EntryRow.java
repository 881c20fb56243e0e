package org.vanewright.catalogue.search;

/**
 * What is kept in memory of an entry, so that much is counted without reading it.
 *
 * @param id of the entry
 * @param signature set of facet values that it has
 * @param publishedMicros when it became public, in microseconds since 1970
 * @param effectPpm size of the measured change in millionths; {@value SearchEntry#NO_EFFECT} where none was measured
 */
record EntryRow(int id, long signature, long publishedMicros, int effectPpm) {}
