package org.vanewright.record;

/**
 * A public revision with the text that is hashed.
 *
 * @param canonicalJson one line; of an imported document the text that came, which may name records as at its origin
 */
public record PublicDocument<T extends RecordContent>(Revision<T> revision, String canonicalJson) {}
