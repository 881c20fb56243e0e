package org.vanewright.catalogue.search;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The words of one entry with where they stand. */
final class WordBag {
    /** Distinct words that are kept of one entry; texts are far shorter. */
    private static final int MOST = 1000;

    /** Stands before a stem, so that it is never taken for the beginning of a word. */
    private static final char STEM = '=';

    private final Map<String, EnumSet<Weight>> words = new TreeMap<>();

    WordBag add(Weight weight, String text) {
        for (String word : Words.of(text)) {
            if (words.size() < MOST || words.containsKey(word)) {
                words.computeIfAbsent(word, w -> EnumSet.noneOf(Weight.class)).add(weight);
            }
        }
        return this;
    }

    WordBag addAll(Weight weight, Iterable<String> texts) {
        texts.forEach(text -> add(weight, text));
        return this;
    }

    /** As they are written. */
    Set<String> words() {
        return Collections.unmodifiableSet(words.keySet());
    }

    /** What the index holds: each word, and each stem marked as one. */
    Map<String, Set<Weight>> marks() {
        Map<String, Set<Weight>> marks = new TreeMap<>();
        words.forEach((word, weights) -> {
            marks.computeIfAbsent(word, w -> EnumSet.noneOf(Weight.class)).addAll(weights);
            marks.computeIfAbsent(stemMark(Words.stem(word)), w -> EnumSet.noneOf(Weight.class))
                    .addAll(weights);
        });
        return marks;
    }

    /** How the index marks a stem. */
    static String stemMark(String stem) {
        return STEM + stem;
    }
}
