package org.vanewright.export;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A column of a table.
 *
 * @param name in small letters and underscores, with its unit behind it
 * @param type of Table Schema
 * @param unit absent where it has none
 * @param description in a sentence without a full stop
 * @param value of a row; null leaves the cell empty
 */
record Column<R>(
        String name, Type type, @Nullable String unit, String description, Function<R, @Nullable Object> value) {
    /** Types of Table Schema that are used here. */
    enum Type {
        STRING("string"),
        INTEGER("integer"),
        NUMBER("number"),
        BOOLEAN("boolean"),
        DATETIME("datetime"),
        DATE("date");

        private final String word;

        Type(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }
}
