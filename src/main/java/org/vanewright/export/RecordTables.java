package org.vanewright.export;

import java.util.List;
import org.vanewright.record.RecordContent;

/** The tables of one kind of record. A feature declares it as a bean. */
public interface RecordTables<T extends RecordContent> {
    /** Such as {@code "airframe"}. */
    String kind();

    /** That of the records first. */
    List<RecordTable<T, ?>> tables();
}
