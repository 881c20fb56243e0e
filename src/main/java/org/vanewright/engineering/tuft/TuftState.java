package org.vanewright.engineering.tuft;

import java.util.Optional;

/** What a tuft was seen to do. */
public enum TuftState {
    /** Lies along the flow and hardly moves. */
    STEADY('S'),
    /** Flutters or swings about. */
    UNSTEADY('U'),
    /** Points forward, or lifts off the skin. */
    REVERSED('R'),
    /** Hidden, lost, or not looked at; counts for no state. */
    NOT_SEEN('-');

    private final char code;

    TuftState(char code) {
        this.code = code;
    }

    /** Its letter in a survey's compact line. */
    public char code() {
        return code;
    }

    /** Whether it tells anything. */
    public boolean seen() {
        return this != NOT_SEEN;
    }

    /** The state with that letter. */
    public static Optional<TuftState> of(char code) {
        for (TuftState each : values()) {
            if (each.code == code) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }
}
