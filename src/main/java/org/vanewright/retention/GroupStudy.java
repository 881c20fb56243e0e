package org.vanewright.retention;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.survival.KaplanMeier;
import org.vanewright.engineering.inference.survival.LifeTable;
import org.vanewright.engineering.inference.survival.Turnbull;
import org.vanewright.inspection.LossCause;

/**
 * What is known of one group of devices.
 *
 * @param name what they have in common
 * @param installations with those of their devices that belong to it
 * @param devices how many
 * @param lost how many of them
 * @param foundCurve as if each loss had happened when it was found, at 95 %
 * @param steps its steps with limits where the installation is the unit
 * @param curve through what is known: a loss lies between two inspections
 * @param places of that curve with intervals
 * @param table counted in intervals of hours
 * @param causes of the losses, how many of each
 * @param look how often to look closely
 * @param sentence what can be said, in words
 */
public record GroupStudy(
        String name,
        List<WatchedInstallation> installations,
        int devices,
        int lost,
        KaplanMeier foundCurve,
        List<Step> steps,
        Turnbull curve,
        List<Place> places,
        LifeTable table,
        Map<LossCause, Long> causes,
        Look look,
        String sentence) {
    /**
     * A time at which losses were found.
     *
     * @param step of the curve with limits as if each device had a fate of its own
     * @param shared limits with the installation as the unit; null where one cannot be had
     * @param losses the devices that were found lost then
     */
    public record Step(KaplanMeier.Step step, @Nullable Interval shared, List<WatchedDevice> losses) {}

    /**
     * Hours between which a share was lost.
     *
     * @param afterHours last seen in place
     * @param byHours seen lost
     * @param share of all devices
     * @param left share that is left then
     * @param devices its interval, devices drawn
     * @param installations its interval, installations drawn; null with fewer than two
     */
    public record Place(
            double afterHours,
            double byHours,
            double share,
            double left,
            Interval devices,
            @Nullable Interval installations) {}

    /**
     * A suggestion how often to look closely, in hours flown.
     *
     * @param everyHours rounded down; null where it would be less than an hour, so that only every flight is often enough
     * @param lowest survival that the data still allow after those hours, as the suggestion takes it
     * @param afterHours how long was watched
     * @param fitted most devices of one installation
     */
    public record Look(@Nullable Double everyHours, double lowest, double afterHours, int fitted) {}
}
