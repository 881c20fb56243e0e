package org.vanewright.engineering.placement;

/** How neighbouring vanes of a row are turned. */
public enum Arrangement {
    /** All vanes turned the same way; all vortices turn the same way. */
    CO_ROTATING,
    /** Pairs with leading edges together (toe-in): the air between the two vortices moves towards the skin. */
    COMMON_FLOW_DOWN,
    /** Pairs with leading edges apart (toe-out): the air between the two vortices moves away from the skin. */
    COMMON_FLOW_UP;

    /** What two vanes make that stand as a pair; positive is toe-in, in degrees. */
    public static Arrangement ofPair(double angleDeg) {
        return angleDeg >= 0 ? COMMON_FLOW_DOWN : COMMON_FLOW_UP;
    }

    public boolean paired() {
        return this != CO_ROTATING;
    }
}
