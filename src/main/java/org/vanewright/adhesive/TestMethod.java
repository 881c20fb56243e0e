package org.vanewright.adhesive;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * How a strength was measured. D3330 and D3654 by their published scope; the others from memory of the standards' titles.
 */
public enum TestMethod {
    ASTM_D3330("ASTM D3330", Property.PEEL),
    ISO_29862("ISO 29862", Property.PEEL),
    ISO_8510_2("ISO 8510-2", Property.PEEL),
    EN_1939("EN 1939", Property.PEEL),
    PSTC_101("PSTC-101", Property.PEEL),
    ASTM_D1062("ASTM D1062", Property.CLEAVAGE),
    ASTM_D1002("ASTM D1002", Property.SHEAR),
    ASTM_D3163("ASTM D3163", Property.SHEAR),
    ISO_4587("ISO 4587", Property.SHEAR),
    ASTM_D897("ASTM D897", Property.TENSILE),
    ISO_6922("ISO 6922", Property.TENSILE),
    ASTM_D3654("ASTM D3654", Property.HOLDING),
    ISO_29863("ISO 29863", Property.HOLDING),
    PSTC_107("PSTC-107", Property.HOLDING),
    OWN_TEST("own test, described", null),
    NOT_STATED("method not stated", null);

    private final String label;
    private final @Nullable Property property;

    TestMethod(String label, @Nullable Property property) {
        this.label = label;
        this.property = property;
    }

    public String label() {
        return label;
    }

    /** Whether it can have measured that. */
    public boolean measures(Property asked) {
        return property == null || property == asked;
    }

    /** Every method for a property. */
    public static List<TestMethod> of(Property asked) {
        return Arrays.stream(values()).filter(m -> m.measures(asked)).toList();
    }

    /** Their names, for a message. */
    static String namesOf(Property asked) {
        return of(asked).stream().map(TestMethod::name).collect(Collectors.joining(", "));
    }
}
