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
    /** What a posted form says about itself, and not about the record. */
    private static final Set<String> NOT_OF_THE_RECORD = Set.of("action", "base", "version");

    /** Every field in which the two changes differ, in the order of the page. */
    public static List<FormDifference> between(Form before, Form theirs, Form yours) {
        Set<String> paths = new LinkedHashSet<>(before.values().keySet());
        paths.addAll(theirs.values().keySet());
        paths.addAll(yours.values().keySet());
        paths.removeAll(NOT_OF_THE_RECORD);
        return paths.stream()
                .filter(path -> !theirs.value(path).equals(yours.value(path)))
                .map(path -> new FormDifference(
                        before.words(path), before.value(path), theirs.value(path), yours.value(path)))
                .toList();
    }
}
