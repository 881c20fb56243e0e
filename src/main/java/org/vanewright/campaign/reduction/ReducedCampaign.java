package org.vanewright.campaign.reduction;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.Measure;
import org.vanewright.engineering.inference.SampleSize;

/**
 * A campaign with what follows from it.
 *
 * @param measure what is compared
 * @param calibration of airspeeds
 * @param configurations the unmodified aircraft first
 * @param conclusions of each other configuration against it
 * @param design how they were compared, in words, with the reason
 * @param slope by which values were brought to the same entry rate (kt per kt/s); null where they were not
 * @param power at the scatter of the unmodified aircraft, how many are needed; null before two of its points are flown
 * @param warnings what a reader must know first
 * @param method how it was computed
 * @param sources of that
 */
public record ReducedCampaign(
        Measure measure,
        SpeedCalibration calibration,
        List<ReducedConfiguration> configurations,
        List<Conclusion> conclusions,
        String design,
        @Nullable Double slope,
        @Nullable SampleSize power,
        List<String> warnings,
        String method,
        List<String> sources) {
    /** The unmodified aircraft. */
    public ReducedConfiguration baseline() {
        return configurations.get(0);
    }

    /** Every reduced test point, by configuration. */
    public Stream<ReducedPoint> points() {
        return configurations.stream().flatMap(c -> c.points().stream());
    }

    /** Whether anything can be compared. */
    public boolean hasClaims() {
        return conclusions.stream().anyMatch(c -> c.claim() != null);
    }
}
