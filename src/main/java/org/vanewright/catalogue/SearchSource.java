package org.vanewright.catalogue;

import java.util.List;
import org.vanewright.record.RecordContent;
import org.vanewright.record.Revision;

/** Describes one kind of record to the search. Each feature that publishes has one. */
public interface SearchSource<T extends RecordContent> {
    /** The kind of record, such as {@code "layout"}. */
    String kind();

    /** What people call one, such as {@code "Layout"}. */
    String label();

    /** Other words by which people look for the kind. */
    default List<String> otherWords() {
        return List.of();
    }

    /** How much the kind counts among others that fit the words as well, of 100: less where one record has many such. */
    default int prominence() {
        return 100;
    }

    /** Describes a published revision by that revision and by public revisions that it names, nothing else. */
    SearchDescription describe(Revision<T> revision);
}
