package org.vanewright.evidence;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.OperatingBasis;
import org.vanewright.campaign.Measure;
import org.vanewright.engineering.inference.Comparison;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.RelativeChange;
import org.vanewright.record.RevisionRef;

/**
 * One published comparison: a layout that was flown against the unmodified aircraft.
 *
 * @param campaign exact revision
 * @param campaignName what people call it
 * @param campaignSha256 of its canonical JSON
 * @param publishedAt when it became public
 * @param contributor who published it
 * @param airframe exact revision
 * @param airframeName what people call it
 * @param operatingBasis class of the aircraft; null where it is not stated
 * @param layout exact revision
 * @param configurationKey of the campaign's plan
 * @param configurationName of the campaign's plan
 * @param place of the configuration among those of its campaign that could be compared, from 0, in the order of the plan
 * @param quantity what was compared
 * @param comparison the numbers, in the quantity's unit
 * @param relative change over the unmodified aircraft's mean; null where that mean cannot be told from 0
 * @param baselineMean of the unmodified aircraft at standard conditions
 * @param changeSeen whether a change was seen, corrected where a campaign compares several configurations
 * @param setting of flaps, power and centre of gravity
 * @param calibrated whether airspeeds were corrected by a position-error curve
 * @param fitted where the devices stand; null where the layout cannot be placed
 * @param invented true for demonstration data
 */
public record Finding(
        RevisionRef campaign,
        String campaignName,
        String campaignSha256,
        Instant publishedAt,
        String contributor,
        RevisionRef airframe,
        String airframeName,
        @Nullable OperatingBasis operatingBasis,
        RevisionRef layout,
        String configurationKey,
        String configurationName,
        int place,
        Measure quantity,
        Comparison comparison,
        @Nullable RelativeChange relative,
        double baselineMean,
        boolean changeSeen,
        Setting setting,
        boolean calibrated,
        @Nullable Fitted fitted,
        boolean invented) {
    /**
     * As the plan words it.
     *
     * @param flaps their setting
     * @param power its setting
     * @param centreOfGravity where it is
     */
    public record Setting(String flaps, String power, String centreOfGravity) {}

    /** How addresses name it, such as {@code clean-stall@2.B}. */
    public String reference() {
        return campaign.slug() + "@" + campaign.revision() + "." + configurationKey;
    }

    /** The campaign's page at the revision it was read from. */
    public String path() {
        return "/campaigns/" + campaign.slug() + "/revisions/" + campaign.revision();
    }

    /** Modified less unmodified, in {@link #unit()}. */
    public double change() {
        return comparison.difference();
    }

    public String unit() {
        return quantity.unit();
    }

    /** 95 % confidence interval of the change, not corrected for several configurations. */
    public Interval interval() {
        return comparison.interval();
    }

    public double standardError() {
        return comparison.standardError();
    }

    public int baselineCount() {
        return comparison.baselineCount();
    }

    public int modifiedCount() {
        return comparison.modifiedCount();
    }

    /** Whether the 95 % interval of this comparison leaves out no change at all. */
    public boolean intervalExcludesZero() {
        return !interval().contains(0);
    }

    /** x/c of the row with the most vanes; null where it is not known. */
    public @Nullable Double chordFraction() {
        return fitted == null ? null : fitted.chordFraction();
    }

    /** Height of the vanes over the boundary layer's thickness; null where it is not known. */
    public @Nullable Double heightOverThickness() {
        return fitted == null ? null : fitted.heightOverThickness();
    }
}
