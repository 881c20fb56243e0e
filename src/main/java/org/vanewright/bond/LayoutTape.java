package org.vanewright.bond;

import org.vanewright.engineering.tape.TapePlan;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.record.Revision;

/**
 * The tape of a layout.
 *
 * @param layout exact revision
 * @param spares of each kind of base
 * @param plan how it is cut
 */
public record LayoutTape(Revision<LayoutDocument> layout, int spares, TapePlan plan) {
    public static final String METHOD =
            "Each base’s outline from its exact revision, for both wings and the spares; laid in strips across the roll, the"
                    + " longest first, each kind turned by 90° where that is shorter, 1 mm between pieces.";
}
