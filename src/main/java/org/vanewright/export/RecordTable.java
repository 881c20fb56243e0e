package org.vanewright.export;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.vanewright.record.RecordContent;
import org.vanewright.record.Revision;

/**
 * A table that every public revision of one kind adds rows to.
 *
 * @param <T> the document
 * @param <R> a row of the table
 */
public final class RecordTable<T extends RecordContent, R> {
    private static final List<String> RECORD = List.of("slug", "revision");
    private static final List<String> REVISION = List.of("kind", "slug", "revision");

    private final Table<Row<R>> table;
    private final Function<Revision<T>, List<R>> rows;

    /** A row with the revision that it is of, and its number there from 1. */
    record Row<R>(Revision<?> revision, int number, R item) {}

    private RecordTable(Table<Row<R>> table, Function<Revision<T>, List<R>> rows) {
        this.table = table;
        this.rows = rows;
    }

    /**
     * The table of the records themselves, one row a revision.
     *
     * @param kind such as {@code "airframe"}
     * @param name in small letters and underscores
     * @param description what a row is
     */
    public static <T extends RecordContent> RecordTable<T, T> ofRecords(
            String kind, String name, String description, Columns<T> columns) {
        Columns<Row<T>> keys = keys();
        keys.text("kind", "Kind of record", row -> kind).refers(REVISION, "revisions", REVISION);
        return make(name, description, RECORD, keys, columns, r -> List.of(r.content()));
    }

    /**
     * A table of parts of a record, numbered within each.
     *
     * @param main table of the records
     * @param part what the column of their numbers is called
     * @param rows of a document
     */
    public static <T extends RecordContent, R> RecordTable<T, R> ofParts(
            String main, String name, String description, String part, Function<T, List<R>> rows, Columns<R> columns) {
        return ofFindings(main, name, description, part, revision -> rows.apply(revision.content()), columns);
    }

    /** As {@link #ofParts} for what follows from a revision rather than stands in its document. */
    public static <T extends RecordContent, R> RecordTable<T, R> ofFindings(
            String main,
            String name,
            String description,
            String part,
            Function<Revision<T>, List<R>> rows,
            Columns<R> columns) {
        Columns<Row<R>> keys = keys();
        keys.whole(part, "Its number within the revision, from 1", Row::number).refers(RECORD, main, RECORD);
        return make(name, description, List.of("slug", "revision", part), keys, columns, rows);
    }

    private static <R> Columns<Row<R>> keys() {
        return new Columns<Row<R>>()
                .text(
                        "slug",
                        "Name of the record in addresses",
                        row -> row.revision().slug())
                .whole(
                        "revision",
                        "Number of the revision",
                        row -> row.revision().number());
    }

    private static <T extends RecordContent, R> RecordTable<T, R> make(
            String name,
            String description,
            List<String> key,
            Columns<Row<R>> keys,
            Columns<R> columns,
            Function<Revision<T>, List<R>> rows) {
        List<Column<Row<R>>> all = new ArrayList<>(keys.all());
        for (Column<R> c : columns.all()) {
            all.add(new Column<>(
                    c.name(),
                    c.type(),
                    c.unit(),
                    c.description(),
                    row -> c.value().apply(row.item())));
        }
        List<Columns.ForeignKey> foreignKeys = new ArrayList<>(keys.foreignKeys());
        foreignKeys.addAll(columns.foreignKeys());
        return new RecordTable<>(new Table<>(name, description, List.copyOf(all), key, foreignKeys), rows);
    }

    Table<?> table() {
        return table;
    }

    /** Gives the cells of each row that the revision adds. */
    void write(Revision<T> revision, Consumer<List<String>> sink) {
        List<R> items = rows.apply(revision);
        for (int i = 0; i < items.size(); i++) {
            sink.accept(table.cells(new Row<>(revision, i + 1, items.get(i))));
        }
    }
}
