package org.vanewright.review;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.vanewright.platform.form.Form;

/**
 * A field of two versions side by side.
 *
 * @param path such as {@code masses.emptyKg}
 * @param field in words
 * @param before empty where the first has none
 * @param after empty where the second has none
 */
public record FieldChange(String path, String field, String before, String after) {
    /** Every field that either fills, in the order of the page. */
    public static List<FieldChange> between(Form before, Form after) {
        Set<String> paths = new LinkedHashSet<>(after.values().keySet());
        paths.addAll(before.values().keySet());
        return paths.stream()
                .map(path -> new FieldChange(path, after.words(path), before.value(path), after.value(path)))
                .filter(c -> !c.before().isBlank() || !c.after().isBlank())
                .toList();
    }

    public boolean changed() {
        return !before.equals(after);
    }
}
