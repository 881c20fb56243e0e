package org.vanewright.study;

import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument.Speeds;

/** Where in its speed range an aircraft is looked at. */
public enum StudyCondition {
    /** At the clean stalling speed that the airframe states. */
    STALL("Clean stall (Vs1)"),
    APPROACH("Typical approach"),
    CRUISE("Typical cruise"),
    /** At a speed of one's own. */
    SPEED("Another speed");

    private final String label;

    StudyCondition(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** Calibrated airspeed that the airframe states for it; null where it states none. */
    @Nullable
    Double statedKt(@Nullable Speeds speeds) {
        if (speeds == null) {
            return null;
        }
        return switch (this) {
            case STALL -> speeds.vs1Kt();
            case APPROACH -> speeds.approachKt();
            case CRUISE -> speeds.cruiseKt();
            case SPEED -> null;
        };
    }
}
