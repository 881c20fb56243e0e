package org.vanewright.inspection;

/** Why a device is thought to have come off. */
public enum LossCause {
    AIR_LOAD_SUSPECTED("Air load suspected"),
    KNOCKED("Knocked"),
    HEAT("Heat"),
    ICE_OR_WASH("Ice or wash"),
    BAD_PRINT("Bad print"),
    UNKNOWN("Unknown");

    private final String label;

    LossCause(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
