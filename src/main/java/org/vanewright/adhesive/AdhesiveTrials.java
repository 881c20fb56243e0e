package org.vanewright.adhesive;

import java.util.List;

/** Where an adhesive can be tried on paper. Whoever knows layouts gives one; adhesives know nothing of them. */
public interface AdhesiveTrials {
    /** Layouts whose bond can be checked with any adhesive, newest first. */
    List<Trial> of(String adhesiveSlug);

    /**
     * A place to try it.
     *
     * @param name of the layout
     * @param path of the page that checks the bond of that layout with that adhesive
     * @param invented true for demonstration data
     */
    record Trial(String name, String path, boolean invented) {}
}
