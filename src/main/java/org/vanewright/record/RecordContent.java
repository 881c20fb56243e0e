package org.vanewright.record;

/** What a revision says: a feature's document, written to canonical JSON as it stands. */
public interface RecordContent {
    /** What people call it; the slug is made from the first revision's name. */
    String name();

    /** True for demonstration data, which every page marks as invented. */
    boolean invented();
}
