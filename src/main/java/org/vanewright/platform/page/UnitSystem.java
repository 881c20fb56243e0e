package org.vanewright.platform.page;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** In which units pages show airframes and forms take them. Devices are in mm in both. */
public enum UnitSystem {
    METRIC,
    US;

    /** The system of that name in any case; {@link #METRIC} for anything else. */
    public static UnitSystem of(@Nullable String name) {
        return name != null && US.name().equals(name.toUpperCase(Locale.ROOT)) ? US : METRIC;
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
