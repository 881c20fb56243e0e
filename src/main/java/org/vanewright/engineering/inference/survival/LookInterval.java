package org.vanewright.engineering.inference.survival;

/**
 * After how many hours a close look is due, if losses come at a constant rate. With survival at least S after T hours the
 * rate is at most −ln S / T for each device and hour; of n devices, no more than {@code accepted} are lost on average within
 * h = accepted·T/(−n ln S). Never more than T: beyond, nothing was seen.
 */
public final class LookInterval {
    private LookInterval() {}

    /**
     * @param lowestSurvival lower limit of the survival after those hours, above 0, below 1
     * @param hours of that survival, above 0
     * @param devices fitted, at least 1
     * @param accepted losses on average between two looks, above 0
     * @return hours, above 0, at most {@code hours}
     */
    public static double hours(double lowestSurvival, double hours, int devices, double accepted) {
        double rate = -Math.log(lowestSurvival) / hours;
        return Math.min(hours, accepted / (devices * rate));
    }
}
