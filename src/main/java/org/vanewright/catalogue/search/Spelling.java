package org.vanewright.catalogue.search;

import java.util.List;
import org.apache.lucene.util.automaton.CharacterRunAutomaton;
import org.apache.lucene.util.automaton.LevenshteinAutomata;

/** Which words are so near a typed one that it may be a slip: by letters added, left out, changed or swapped. */
final class Spelling {
    private static final int SHORTEST = 3;
    private static final int ONE_SLIP_UP_TO = 5;
    private static final int OFFERED = 3;

    private Spelling() {}

    /** The nearest of the candidates, in their order; empty where none is near enough. */
    static List<String> nearest(String typed, List<String> candidates) {
        if (typed.codePointCount(0, typed.length()) < SHORTEST) {
            return List.of();
        }
        LevenshteinAutomata slips = new LevenshteinAutomata(typed, true);
        int most = typed.length() <= ONE_SLIP_UP_TO ? 1 : LevenshteinAutomata.MAXIMUM_SUPPORTED_DISTANCE;
        for (int distance = 1; distance <= most; distance++) {
            CharacterRunAutomaton within = new CharacterRunAutomaton(slips.toAutomaton(distance));
            List<String> near = candidates.stream()
                    .filter(within::run)
                    .distinct()
                    .limit(OFFERED)
                    .toList();
            if (!near.isEmpty()) {
                return near;
            }
        }
        return List.of();
    }
}
