package org.vanewright.bond;

import java.util.List;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.record.Revision;

/**
 * The bond of every row of a layout.
 *
 * @param layout exact revision
 * @param airframe exact revision
 * @param adhesive exact revision
 * @param conditions what the bonds are asked to bear
 * @param rows that carry devices
 */
public record LayoutBond(
        Revision<LayoutDocument> layout,
        Revision<AirframeDocument> airframe,
        Revision<AdhesiveDocument> adhesive,
        BondConditions conditions,
        List<RowBond> rows) {
    public static final String METHOD =
            "Air: F = n q C_N S on the side of each vane, with q = ½ ρ₀ (r V)², C_N by the leading-edge suction analogy at"
                    + " the vane's angle and the sideslip, at the middle of its side; a pair counts as both pushed the same"
                    + " way. Knock: the force stated, at the tip of one vane. Mean shear τ = F/A; moment M = F (h_F + t) with"
                    + " h_F from the underside of the base. Sideways: a rigid base, σ = 6 M/(L b²); where β b is above 1"
                    + " a beam with free ends on an elastic foundation, too, and the larger counts; along the vane, which is a rib, always rigid. L is"
                    + " that of the rectangle that bears the same moment as the outline. Line load T: the tension of the"
                    + " pulled part for each length of edge. Margin: strength times the three knock-downs over that. Cleavage"
                    + " strength is used where stated, else peel strength, on the safe side.";
    public static final List<String> SOURCES = List.of(
            "E. C. Polhamus, A Concept of the Vortex Lift of Sharp-Edge Delta Wings Based on a Leading-Edge-Suction Analogy,"
                    + " NASA TN D-3767, 1966 (from memory)",
            "M. Hetényi, Beams on Elastic Foundation, University of Michigan Press, 1946 (from memory)",
            "Rigid rectangular base on an elastic layer: first-order mechanics, derived; no published check of stick-on"
                    + " devices was found",
            "ASTM D3330/D3330M-04(2018): its warning that stiff backings may not suit a peel test (read in a published"
                    + " copy)");
    public static final List<String> LIMITS = List.of(
            "Linear, at once and once: tapes creep under steady loads, age, and bear slow pulls worse than quick ones.",
            "Strengths come from clean test plates. On fabric, wax or weak paint the surface may let go first.",
            "Flutter, propeller wash, rain and ice are not in it.",
            "No margin is an approval. A bond is tried on the wing itself, and looked at before every flight.");
}
