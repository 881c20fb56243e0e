package org.vanewright.export;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.vanewright.export.Column.Type;
import org.vanewright.record.RevisionRef;

/**
 * The columns of a table, in their order, and to which other tables they lead.
 *
 * @param <R> a row
 */
public final class Columns<R> {
    private final List<Column<R>> all = new ArrayList<>();
    private final List<ForeignKey> foreignKeys = new ArrayList<>();

    /** Columns that name a row of another table. */
    record ForeignKey(List<String> columns, String table, List<String> named) {}

    public Columns<R> text(String name, String description, Function<R, @Nullable String> value) {
        return add(name, Type.STRING, null, description, value::apply);
    }

    /** One of a few names, as in the documents. */
    public Columns<R> choice(String name, String description, Function<R, ? extends @Nullable Enum<?>> value) {
        return add(name, Type.STRING, null, description, row -> {
            Enum<?> chosen = value.apply(row);
            return chosen == null ? null : chosen.name();
        });
    }

    /** @param unit with which the column's name ends, in words of the trade such as {@code mm} */
    public Columns<R> number(String name, String unit, String description, Function<R, @Nullable Double> value) {
        return add(name, Type.NUMBER, unit, description, value::apply);
    }

    /** A number that has no unit. */
    public Columns<R> ratio(String name, String description, Function<R, @Nullable Double> value) {
        return add(name, Type.NUMBER, null, description, value::apply);
    }

    /** A number that was computed, to six figures, so that what machines differ in does not show. */
    public Columns<R> computed(String name, String description, Function<R, @Nullable Double> value) {
        return ratio(name, description, row -> {
            Double number = value.apply(row);
            return number == null || !Double.isFinite(number)
                    ? null
                    : (Double) new BigDecimal(number).round(new MathContext(6)).doubleValue();
        });
    }

    public Columns<R> whole(String name, String description, Function<R, @Nullable Integer> value) {
        return add(name, Type.INTEGER, null, description, value::apply);
    }

    public Columns<R> yesNo(String name, String description, Function<R, @Nullable Boolean> value) {
        return add(name, Type.BOOLEAN, null, description, value::apply);
    }

    public Columns<R> time(String name, String description, Function<R, @Nullable Instant> value) {
        return add(name, Type.DATETIME, null, description, value::apply);
    }

    /** A time as documents hold it, {@code 2026-05-02T09:14:00Z}; what is none, which rules do not let through, is left out. */
    public Columns<R> timeText(String name, String description, Function<R, @Nullable String> value) {
        return add(name, Type.DATETIME, null, description, row -> {
            String at = value.apply(row);
            try {
                return at == null ? null : Instant.parse(at);
            } catch (DateTimeParseException e) {
                return null;
            }
        });
    }

    /** A day as in ISO 8601; what is none, which rules do not let through, is left out. */
    public Columns<R> day(String name, String description, Function<R, @Nullable String> value) {
        return add(name, Type.DATE, null, description, row -> {
            String day = value.apply(row);
            return day != null && day.matches("\\d{4}-\\d{2}-\\d{2}") ? day : null;
        });
    }

    /** An exact revision of another kind of record: its slug and number. */
    public Columns<R> revision(
            String name, String table, String description, Function<R, @Nullable RevisionRef> value) {
        add(name + "_slug", Type.STRING, null, description, row -> {
            RevisionRef ref = value.apply(row);
            return ref == null ? null : ref.slug();
        });
        add(name + "_revision", Type.INTEGER, null, "Its revision", row -> {
            RevisionRef ref = value.apply(row);
            return ref == null ? null : (Integer) ref.revision();
        });
        return refers(List.of(name + "_slug", name + "_revision"), table, List.of("slug", "revision"));
    }

    Columns<R> refers(List<String> columns, String table, List<String> named) {
        foreignKeys.add(new ForeignKey(columns, table, named));
        return this;
    }

    private Columns<R> add(
            String name, Type type, @Nullable String unit, String description, Function<R, @Nullable Object> value) {
        all.add(new Column<>(name, type, unit, description, value));
        return this;
    }

    List<Column<R>> all() {
        return List.copyOf(all);
    }

    List<ForeignKey> foreignKeys() {
        return List.copyOf(foreignKeys);
    }
}
