package org.vanewright.record;

/**
 * What is public of a record changes: a revision was published, superseded or withdrawn. Told within the transaction that
 * changes it, to those who keep something beside it that must change with it or not at all.
 *
 * @param kind such as {@code "layout"}
 * @param slug of the record
 */
public record PublicChange(String kind, String slug) {}
