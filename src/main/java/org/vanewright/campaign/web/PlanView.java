package org.vanewright.campaign.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.PlanDocument;
import org.vanewright.campaign.RepeatsDocument;
import org.vanewright.campaign.Schedule;
import org.vanewright.engineering.inference.SampleSize;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.page.HtmlRows;
import org.vanewright.platform.page.Numbers;
import org.vanewright.platform.plot.DrawnPlot;

/**
 * What follows from a plan before anything is flown.
 *
 * @param repeats how many are needed, in a sentence; null while scatter and change are not given
 * @param enough whether the planned number is that many; null likewise
 * @param power curve of power over repeats; null likewise
 * @param schedule the order of flying; null while it cannot be drawn
 */
public record PlanView(
        @Nullable String repeats,
        @Nullable Boolean enough,
        @Nullable DrawnPlot power,
        @Nullable Schedule schedule) {
    /** Most campaigns are planned with the same few figures. */
    private static final Cache<RepeatsDocument, Optional<SampleSize>> SIZES =
            Caffeine.newBuilder().maximumSize(200).build();

    /** @param idPrefix starts every id within */
    static PlanView of(PlanDocument plan, String idPrefix) {
        SampleSize size = sampleSize(plan.repeats()).orElse(null);
        Measure measure = plan.measure();
        Integer planned = plan.repeats().perConfiguration();
        return new PlanView(
                size == null || measure == null ? null : sentence(size, measure),
                size == null || planned == null ? null : (Boolean) (planned >= size.perGroup()),
                size == null ? null : PowerPlot.of(size, planned, idPrefix),
                Schedule.of(plan).orElse(null));
    }

    /** The order of flying as rows of its table. */
    public String sorties() {
        HtmlRows rows = new HtmlRows();
        for (Schedule.Sortie s : schedule == null ? List.<Schedule.Sortie>of() : schedule.sorties()) {
            rows.row(String.valueOf(s.number()))
                    .figure(String.valueOf(s.block()))
                    .words(s.key())
                    .figure(String.valueOf(s.points()));
        }
        return rows.html();
    }

    private static Optional<SampleSize> sampleSize(RepeatsDocument repeats) {
        return repeats.scatter() == null || repeats.change() == null
                ? Optional.empty()
                : SIZES.get(repeats, PlanView::computed);
    }

    private static Optional<SampleSize> computed(RepeatsDocument repeats) {
        try {
            return Optional.of(SampleSize.twoGroups(
                    Objects.requireNonNull(repeats.scatter()),
                    Objects.requireNonNull(repeats.change()),
                    repeats.significanceOrUsual(),
                    repeats.powerOrUsual()));
        } catch (InvalidInputException e) {
            return Optional.empty();
        }
    }

    static String sentence(SampleSize size, Measure measure) {
        return String.format(
                Locale.ROOT,
                "%s of each configuration find a change of %s %s with a chance of %.0f %%, if one scatters by %s %s and a"
                        + " false alarm in %.0f %% of campaigns without any change is accepted.",
                measure.counted(size.perGroup()),
                plain(size.difference()),
                measure.unit(),
                100 * size.power(),
                plain(size.standardDeviation()),
                measure.unit(),
                100 * size.significance());
    }

    private static String plain(double number) {
        return Numbers.trimmed(number, 2);
    }
}
