package org.vanewright.engineering.placement;

/** On which wings a row is fitted. */
public enum WingChoice {
    /** Both wings, the right one a mirror image of the left: what symmetry asks for. */
    BOTH_MIRRORED,
    /**
     * Both wings, each vane turned the same way as seen from above: toe-in on the left is toe-out on the right. Pairs
     * turn both ways, so for them this is the same as {@link #BOTH_MIRRORED}.
     */
    BOTH_SAME_HAND,
    LEFT_ONLY,
    RIGHT_ONLY;

    public boolean on(Wing wing) {
        return switch (this) {
            case LEFT_ONLY -> wing == Wing.LEFT;
            case RIGHT_ONLY -> wing == Wing.RIGHT;
            default -> true;
        };
    }

    /** Factor from the toe-in angle of a single vane on the left wing to the one on this wing. */
    double angleSign(Wing wing) {
        return this == BOTH_SAME_HAND && wing == Wing.RIGHT ? -1 : 1;
    }
}
