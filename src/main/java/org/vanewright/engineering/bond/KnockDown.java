package org.vanewright.engineering.bond;

/**
 * What is left of a data sheet's strength, as fractions. The usual ones are engineering judgement, no source: nothing
 * published for stick-on devices was found.
 *
 * @param temperature hot skin in the sun
 * @param ageing a season of sun, wet and creep
 * @param surface paint or fabric in place of the test's clean steel
 */
public record KnockDown(double temperature, double ageing, double surface) {
    public static final KnockDown NONE = new KnockDown(1, 1, 1);

    public static final KnockDown USUAL = new KnockDown(0.5, 0.5, 0.7);

    /** What is left of a strength. */
    public double factor() {
        return temperature * ageing * surface;
    }
}
