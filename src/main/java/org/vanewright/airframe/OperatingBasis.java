package org.vanewright.airframe;

/** Under which rules the aircraft flies; decides whom a modification must be agreed with. */
public enum OperatingBasis {
    EXPERIMENTAL_AMATEUR_BUILT("Experimental, amateur-built"),
    LIGHT_SPORT_MANUFACTURER_BUILT("Light sport, manufacturer-built"),
    ULTRALIGHT_MICROLIGHT("Ultralight or microlight"),
    TYPE_CERTIFICATED("Type-certificated"),
    OTHER("Other");

    private final String label;

    OperatingBasis(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
