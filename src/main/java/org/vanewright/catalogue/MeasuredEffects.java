package org.vanewright.catalogue;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What flights have measured of records. Whoever records flights gives one; the search knows nothing of them. */
public interface MeasuredEffects {
    /** By a record's kind and slug; empty where nothing can be measured of that kind. */
    Optional<Flights> of(String kind, String slug);

    /** Records of which something else is known once the given one changes. */
    List<Concerned> concernedBy(String kind, String slug);

    /** A record by its kind and slug. */
    record Concerned(String kind, String slug) {}

    /**
     * What was flown.
     *
     * @param flown whether any test point was
     * @param effects each measured change
     */
    record Flights(boolean flown, List<Effect> effects) {
        /** The one whose interval is the narrowest; the largest is chosen by chance as often as by merit. */
        public Optional<Effect> mostPrecise() {
            return effects.stream().min(Comparator.comparingDouble(Effect::relativeHalfWidth));
        }
    }

    /**
     * A measured change of one configuration against the unmodified aircraft.
     *
     * @param sentence what may be said of it
     * @param relative change over the unmodified aircraft's mean, such as −0.05
     * @param relativeHalfWidth half the width of its 95 % interval, over the same
     * @param excludesZero whether that interval excludes 0
     */
    record Effect(String sentence, double relative, double relativeHalfWidth, boolean excludesZero) {}
}
