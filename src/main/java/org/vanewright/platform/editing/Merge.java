package org.vanewright.platform.editing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.platform.form.FormDifference;

/**
 * Two changes that started from one text.
 *
 * @param number of the revision published meanwhile; null where a co-author saved the same draft
 * @param by who published it
 * @param differences where the two do not agree
 */
public record Merge(@Nullable Integer number, @Nullable String by, List<FormDifference> differences) {
    public Merge {
        differences = List.copyOf(differences);
    }

    /** Such as {@code published-1}, unique on the page. */
    public String id() {
        return number == null ? "saved-meanwhile" : "published-meanwhile";
    }
}
