package org.vanewright.installsheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.StationTolerance;
import org.vanewright.printrun.PrintRunDocument;
import org.vanewright.record.Revision;

/**
 * All that an install sheet says of its layout.
 *
 * @param layout exact revision
 * @param plan with every device placed
 * @param adhesive as chosen; null leaves its figures to be filled in
 * @param run that the pieces come from; null leaves it to be filled in
 * @param wing the one the sheet is for; null means both
 * @param sample stations to be measured, some of every row and wing
 * @param masses of every row, both wings
 */
public record InstallFacts(
        Revision<LayoutDocument> layout,
        LayoutPlan plan,
        @Nullable Revision<AdhesiveDocument> adhesive,
        @Nullable Revision<PrintRunDocument> run,
        @Nullable Wing wing,
        List<StationTolerance> sample,
        List<SetMass> masses) {
    public InstallFacts {
        sample = List.copyOf(sample);
        masses = List.copyOf(masses);
    }

    /** Whether the sheet is for that wing, too. */
    public boolean covers(Wing asked) {
        return wing == null || wing == asked;
    }

    /** Whether anything it rests on is invented. */
    public boolean invented() {
        return layout.content().invented()
                || plan.airframe().content().invented()
                || adhesive != null && adhesive.content().invented()
                || run != null && run.content().invented();
    }
}
