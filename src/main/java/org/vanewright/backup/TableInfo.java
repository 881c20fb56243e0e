package org.vanewright.backup;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.vanewright.backup.BackupManifest.Column;

/**
 * A table as the database's own catalogue has it.
 *
 * @param key columns of its primary key; empty where it has none
 * @param counting columns that count by themselves, with the value that comes next
 * @param parents tables that its rows refer to
 * @param types the database's own names of columns' types
 */
record TableInfo(
        String name,
        List<Column> columns,
        List<String> key,
        Map<String, Long> counting,
        Set<String> parents,
        Map<String, String> types) {
    /** What the search makes anew from the records, differently on either database. */
    boolean isProjection() {
        return name.startsWith("search_");
    }
}
