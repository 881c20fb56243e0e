package org.vanewright.campaign;

import java.util.List;
import java.util.function.Function;
import org.vanewright.campaign.CampaignComparisons.Compared;
import org.vanewright.export.Columns;
import org.vanewright.export.RecordTable;
import org.vanewright.record.Revision;

/** What campaigns came to, in the export. */
final class ComparisonTable {
    private ComparisonTable() {}

    static RecordTable<CampaignDocument, Compared> of(Function<Revision<CampaignDocument>, List<Compared>> compared) {
        return RecordTable.ofFindings(
                CampaignTables.MAIN,
                "campaign_comparisons",
                "Each layout against the unmodified aircraft, computed from the test points of the published revision;"
                        + " it holds for that aircraft and those conditions",
                "number",
                compared,
                new Columns<Compared>()
                        .text("mark", "Mark of the configuration", Compared::key)
                        .revision("layout", "layouts", "Layout that was fitted", Compared::layout)
                        .choice("measure", "What is compared", Compared::measure)
                        .text(
                                "measure_unit",
                                "Unit of means, differences and errors",
                                c -> c.measure().unit())
                        .choice(
                                "design",
                                "How the values belong together",
                                c -> c.comparison().design())
                        .computed(
                                "baseline_mean", "Of the unmodified aircraft, in measure_unit", Compared::baselineMean)
                        .computed(
                                "difference",
                                "Modified less unmodified, in measure_unit",
                                c -> c.comparison().difference())
                        .computed(
                                "standard_error",
                                "Of the difference, in measure_unit",
                                c -> c.comparison().standardError())
                        .computed(
                                "degrees_of_freedom",
                                "Of the standard error",
                                c -> c.comparison().degreesOfFreedom())
                        .computed(
                                "confidence",
                                "Of the interval",
                                c -> c.comparison().confidence())
                        .computed(
                                "interval_low",
                                "Lower end, in measure_unit",
                                c -> c.comparison().interval().low())
                        .computed(
                                "interval_high",
                                "Upper end, in measure_unit",
                                c -> c.comparison().interval().high())
                        .computed("p_value", "Two-sided", c -> c.comparison().pValue())
                        .whole(
                                "baseline_count",
                                "Values of the unmodified aircraft",
                                c -> c.comparison().baselineCount())
                        .whole(
                                "modified_count",
                                "Values with the layout",
                                c -> c.comparison().modifiedCount())
                        .computed(
                                "relative_change",
                                "Difference over the unmodified mean; empty where that has no bounds",
                                c -> c.relative() == null
                                        ? null
                                        : (Double) c.relative().ratio())
                        .yesNo("change_seen", "Corrected where several layouts were compared", Compared::changeSeen)
                        .yesNo(
                                "calibrated",
                                "Whether airspeeds were corrected by a position-error curve",
                                Compared::calibrated));
    }
}
