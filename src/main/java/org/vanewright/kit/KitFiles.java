package org.vanewright.kit;

import java.util.List;
import org.vanewright.record.RecordContent;
import org.vanewright.record.Revision;

/** What one kind of record gives to a kit. A feature gives one; several for a kind are put together. */
public interface KitFiles<T extends RecordContent> {
    /** Such as {@code "layout"}. */
    String kind();

    /**
     * The files of a revision. They must depend on the revision and what it names alone, and be the same on every machine.
     *
     * @param revision under the slug and number that it has at its origin
     */
    List<KitFile> of(Revision<T> revision);
}
