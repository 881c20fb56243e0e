package org.vanewright.catalogue;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a search knows of a published revision besides its name.
 *
 * @param summary one line for its card, in units that need no choice
 * @param picture address of a small drawing of exactly this revision; null where there is none
 * @param subjects what it is of or for, such as the names of the records it builds on
 * @param notes longer texts
 * @param facets values it has; of one facet it may have several
 */
public record SearchDescription(
        String summary, @Nullable String picture, List<String> subjects, List<String> notes, List<FacetValue> facets) {}
