package org.vanewright.platform.form;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A field on which two changes of one revision disagree.
 *
 * @param field in words
 * @param before where both started
 * @param theirs what was published meanwhile
 * @param yours what is in the form
 */
public record FormDifference(String field, String before, String theirs, String yours) {
    /** Every field in which the two changes differ, in the order of the page. */
    public static List<FormDifference> between(Form before, Form theirs, Form yours) {
        Set<String> paths = new LinkedHashSet<>(before.values().keySet());
        paths.addAll(theirs.values().keySet());
        paths.addAll(yours.values().keySet());
        return paths.stream()
                .filter(path -> !theirs.value(path).equals(yours.value(path)))
                .map(path -> new FormDifference(
                        before.words(path), before.value(path), theirs.value(path), yours.value(path)))
                .toList();
    }
}
