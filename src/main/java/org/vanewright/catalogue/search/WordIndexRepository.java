package org.vanewright.catalogue.search;

import java.util.List;
import java.util.Map;

/** The words of the entries, in the index that the database has for them. Each database has its own. */
interface WordIndexRepository {
    /**
     * Where words are found, as parts of a statement.
     *
     * @param from further tables behind {@code search_entry e}
     * @param condition that holds for what is found
     * @param weight a whole number that is the larger the better the words fit
     * @param parameters of these parts
     */
    record Match(String from, String condition, String weight, Map<String, Object> parameters) {
        static final Match ANYTHING = new Match("", "1 = 1", "0", Map.of());
    }

    /** A word of the index near one that was typed. */
    record Near(String typed, String word) {}

    /** Where all the terms are found; there is one at least. */
    Match match(List<Term> terms);

    /** Words with the most groups of three letters in common with each that was typed, the nearest first. */
    List<Near> near(List<String> typed, int most);

    /** Keeps the words of an entry in the place of those it had. */
    void put(long entry, WordBag words);

    /** Forgets words that no entry has. */
    void prune();

    /** Above whatever begins with that word and below whatever comes behind. */
    static String beyond(String beginning) {
        return beginning + '\uffff';
    }
}
