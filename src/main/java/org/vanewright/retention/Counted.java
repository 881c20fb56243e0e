package org.vanewright.retention;

import org.jspecify.annotations.Nullable;
import org.vanewright.inspection.LossCause;

/** Which losses count. The others end the watch of their device when it was last seen in place. */
public enum Counted {
    ALL("All losses"),
    NOT_HANDLING("Without knocks, ice and washing");

    private final String label;

    Counted(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    boolean counts(@Nullable LossCause cause) {
        return this == ALL || cause != LossCause.KNOCKED && cause != LossCause.ICE_OR_WASH;
    }
}
