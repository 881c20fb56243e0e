package org.vanewright.engineering.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;

/** Collects checks that share group, source and how they are known. */
final class CheckList {
    private final List<PublishedCheck> checks = new ArrayList<>();
    private final String group;
    private String source = "";
    private HowKnown howKnown = HowKnown.READ;

    CheckList(String group) {
        this.group = group;
    }

    CheckList from(String nextSource, HowKnown known) {
        source = nextSource;
        howKnown = known;
        return this;
    }

    CheckList add(
            String quantity,
            String conditions,
            DoubleSupplier computed,
            double published,
            double tolerance,
            String unit) {
        checks.add(new PublishedCheck(
                group, quantity, conditions, computed, published, tolerance, unit, source, howKnown, null));
        return this;
    }

    CheckList add(String quantity, String conditions, DoubleSupplier computed, double published, double tolerance) {
        return add(quantity, conditions, computed, published, tolerance, "");
    }

    /** Marks the last one as known to lie outside its tolerance. */
    CheckList outsideBecause(String reason) {
        checks.add(checks.remove(checks.size() - 1).outsideBecause(reason));
        return this;
    }

    List<PublishedCheck> list() {
        return List.copyOf(checks);
    }
}
