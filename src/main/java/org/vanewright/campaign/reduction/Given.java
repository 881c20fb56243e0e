package org.vanewright.campaign.reduction;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Figures that the rules have found present. */
final class Given {
    private Given() {}

    static double number(@Nullable Double given) {
        return Objects.requireNonNull(given, "a figure that the rules ask for");
    }

    static double or(@Nullable Double given, double otherwise) {
        return given == null ? otherwise : given;
    }
}
