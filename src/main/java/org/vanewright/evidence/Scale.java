package org.vanewright.evidence;

import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.Measure;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.RelativeChange;
import org.vanewright.engineering.inference.meta.Effect;

/** In what a change is given. */
public enum Scale {
    /** Over the mean of the unmodified aircraft, by which aircraft of different speeds can stand beside each other. */
    PERCENT("per cent of the unmodified aircraft’s") {
        @Override
        public String unit(Measure quantity) {
            return "%";
        }

        @Override
        public @Nullable Change of(Finding finding) {
            RelativeChange relative = finding.relative();
            return relative == null
                    ? null
                    : new Change(
                            100 * relative.ratio(),
                            100 * relative.standardError(),
                            new Interval(
                                    100 * relative.interval().low(),
                                    100 * relative.interval().high()));
        }
    },
    /** In the quantity's own unit. */
    UNIT("its own unit") {
        @Override
        public String unit(Measure quantity) {
            return quantity.unit();
        }

        @Override
        public Change of(Finding finding) {
            return new Change(finding.change(), finding.standardError(), finding.interval());
        }
    };

    private final String label;

    Scale(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    public abstract String unit(Measure quantity);

    /** The change of a finding; null where it cannot be given so. */
    public abstract @Nullable Change of(Finding finding);

    /**
     * A change in some scale.
     *
     * @param value modified less unmodified
     * @param standardError of it
     * @param interval 95 %, of that comparison alone
     */
    public record Change(double value, double standardError, Interval interval) {
        Effect effect() {
            return new Effect(value, standardError);
        }
    }
}
