package org.vanewright.engineering.inference.survival;

import java.util.ArrayList;
import java.util.List;

/** Weeks of remission. E. J. Freireich et al., Blood 21, 1963, 699-716, as read in published copies. */
final class Remissions {
    private Remissions() {}

    static List<Lifetime> treated() {
        List<Lifetime> all = lifetimes(true, 6, 6, 6, 7, 10, 13, 16, 22, 23);
        all.addAll(lifetimes(false, 6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35));
        return all;
    }

    static List<Lifetime> placebo() {
        return lifetimes(true, 1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23);
    }

    static List<Lifetime> lifetimes(boolean lost, double... weeks) {
        List<Lifetime> lifetimes = new ArrayList<>();
        for (double each : weeks) {
            lifetimes.add(new Lifetime(each, lost));
        }
        return lifetimes;
    }
}
