package org.vanewright.engineering.flightlog;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.vanewright.engineering.input.Checks;

/**
 * Which column of a table holds what.
 *
 * @param columns one for the time and at least one for something else; each quantity and each column once
 */
public record LogMapping(List<LogColumn> columns) {
    /** Columns that a table may have. */
    public static final int MAX_COLUMNS = 500;

    /** @throws org.vanewright.engineering.input.InvalidInputException naming the quantity as {@link #field} does */
    @SuppressWarnings("NullAway") // programs leave parts out
    public LogMapping {
        columns = columns == null
                ? List.of()
                : columns.stream()
                        .filter(c -> c != null && c.quantity() != null && c.unit() != null)
                        .toList();
        Checks checks = new Checks();
        Set<LogQuantity> seen = EnumSet.noneOf(LogQuantity.class);
        for (LogColumn each : columns) {
            String field = field(each.quantity());
            checks.require(seen.add(each.quantity()), field, each.column() + 1, "one column for each quantity");
            checks.require(
                    each.column() >= 0 && each.column() < MAX_COLUMNS,
                    field,
                    each.column() + 1,
                    "a column of the table");
            checks.require(
                    each.quantity().units().contains(each.unit()),
                    field,
                    each.unit().label(),
                    "one of "
                            + each.quantity().units().stream()
                                    .map(LogUnit::label)
                                    .toList());
        }
        checks.require(
                columns.stream().map(LogColumn::column).distinct().count() == columns.size(),
                "columns",
                "one column twice",
                "each column for one quantity");
        checks.require(seen.contains(LogQuantity.TIME), field(LogQuantity.TIME), null, "a column with the time");
        checks.require(
                columns.size() >= 2, "columns", columns.size(), "a column for at least one quantity besides the time");
        checks.throwIfAny();
    }

    public Optional<LogColumn> of(LogQuantity quantity) {
        return columns.stream().filter(c -> c.quantity() == quantity).findFirst();
    }

    /** How the field of a quantity is called where a mapping is asked for, such as {@code loadFactor}. */
    public static String field(LogQuantity quantity) {
        String[] words = quantity.name().toLowerCase(Locale.ROOT).split("_");
        StringBuilder field = new StringBuilder(words[0]);
        for (int i = 1; i < words.length; i++) {
            field.append(Character.toUpperCase(words[i].charAt(0))).append(words[i].substring(1));
        }
        return field.toString();
    }
}
