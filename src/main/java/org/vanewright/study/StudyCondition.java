package org.vanewright.study;

import java.util.Arrays;
import java.util.List;
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

    /** The slowest whose speed the airframe states; a speed of one's own where it states none. */
    public static StudyCondition usual(@Nullable Speeds speeds) {
        return Arrays.stream(values())
                .filter(c -> c.statedKt(speeds) != null)
                .findFirst()
                .orElse(SPEED);
    }

    /** Those that can be asked for: whose speed the airframe states, and a speed of one's own. */
    public static List<StudyCondition> possible(@Nullable Speeds speeds) {
        return Arrays.stream(values())
                .filter(c -> c == SPEED || c.statedKt(speeds) != null)
                .toList();
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
