package org.vanewright.layout;

import java.util.Collection;
import java.util.List;
import java.util.Map;

/** What flights say of a layout. Whoever records flights gives one; layouts themselves know nothing of them. */
public interface FlightEvidence {
    /** Published results with any revision of each layout, newest first, in as many statements however many there are. */
    Map<String, List<FlownResult>> of(Collection<String> layoutSlugs);

    /** Published results with any revision of the layout, newest first. */
    default List<FlownResult> of(String layoutSlug) {
        return of(List.of(layoutSlug)).getOrDefault(layoutSlug, List.of());
    }

    /**
     * A result.
     *
     * @param name of the campaign
     * @param path of its page, at the revision that was published
     * @param layoutRevision that was flown
     * @param sentence what may be said
     * @param invented true for demonstration data
     */
    record FlownResult(String name, String path, int layoutRevision, String sentence, boolean invented) {}
}
