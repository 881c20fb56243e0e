package org.vanewright.catalogue.search;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One word that must be there in one of several ways.
 *
 * @param typed word
 * @param stems any of which will do, marked as the index marks them
 * @param beginning of a word that will do, too; null where another spelling stands for what was typed
 */
record Term(String typed, List<String> stems, @Nullable String beginning) {
    static Term of(String word) {
        return new Term(word, List.of(WordBag.stemMark(Words.stem(word))), word);
    }

    /** What is near it in the place of a word that nothing has. */
    static Term instead(String typed, List<String> near) {
        return new Term(
                typed,
                near.stream()
                        .map(w -> WordBag.stemMark(Words.stem(w)))
                        .distinct()
                        .toList(),
                null);
    }

    /** All that is looked for, for a key. */
    String key() {
        return String.join("|", stems) + "|" + (beginning == null ? "" : beginning);
    }
}
