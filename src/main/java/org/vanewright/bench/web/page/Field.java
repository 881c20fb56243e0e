package org.vanewright.bench.web.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.platform.form.Option;

/**
 * A field of a calculator.
 *
 * @param kind how it is filled in
 * @param path its name in the address
 * @param label what a person reads, unit excepted
 * @param unit symbol; null where there is none
 * @param hint beneath the label; null for none
 * @param options of a choice
 * @param group style class of fields that belong to one choice; empty for none
 */
public record Field(
        Kind kind,
        String path,
        String label,
        @Nullable String unit,
        @Nullable String hint,
        List<Option> options,
        String group) {
    /** How a field is filled in. */
    public enum Kind {
        NUMBER,
        TEXT,
        AREA,
        SELECT,
        RADIO,
        TICK
    }

    static Field number(String path, String label, @Nullable String unit, @Nullable String hint) {
        return new Field(Kind.NUMBER, path, label, unit, hint, List.of(), "");
    }

    static Field of(Kind kind, String path, String label, @Nullable String hint) {
        return new Field(kind, path, label, null, hint, List.of(), "");
    }

    static Field choice(Kind kind, String path, String label, List<Option> options) {
        return new Field(kind, path, label, null, null, options, "");
    }

    Field in(String styleClass) {
        return new Field(kind, path, label, unit, hint, options, styleClass);
    }
}
