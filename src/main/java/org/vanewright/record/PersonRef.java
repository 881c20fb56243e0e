package org.vanewright.record;

/**
 * A person with an account.
 *
 * @param id never changes
 * @param name as the person chose to be called; may change
 */
public record PersonRef(String id, String name) {}
