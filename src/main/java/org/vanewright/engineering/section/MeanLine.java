package org.vanewright.engineering.section;

/** Mean line of a section: two polynomial branches over x from 0 to 1, in chords. */
interface MeanLine {
    double height(double x);

    /** First derivative by x. */
    double slope(double x);

    /** Second derivative by x. */
    double bend(double x);

    /** Third derivative by x. */
    double bendRate(double x);

    /** Where one branch meets the other; 0 when there is one branch only. */
    double joint();

    /** Largest height, in chords. */
    double maximumHeight();
}
