package org.vanewright.device;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.catalogue.Bands;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.engineering.solid.DeviceDesign.Planform;
import org.vanewright.engineering.solid.DeviceDesign.Vane;

/** What a device, and whatever carries it, is found by. */
public final class DeviceFacets {
    private DeviceFacets() {}

    /** Planform and height of its vanes. */
    public static List<FacetValue> of(DeviceDocument device) {
        List<FacetValue> facets = new ArrayList<>();
        Vane vane = device.vane();
        if (vane != null) {
            facets.add(FacetValue.of(Facet.PLANFORM, planform(vane), words(planform(vane))));
            Double height = vane.heightMm();
            if (height != null) {
                facets.add(Bands.HEIGHT.of(height));
            }
        }
        return List.copyOf(facets);
    }

    static Planform planform(Vane vane) {
        return vane.planform() == null ? Planform.RECTANGULAR : vane.planform();
    }

    static String words(Planform planform) {
        return switch (planform) {
            case RECTANGULAR -> "Rectangular";
            case TRIANGULAR -> "Triangular";
            case SWEPT_TRAPEZIUM -> "Swept trapezium";
            case OGIVAL -> "Ogival";
        };
    }
}
