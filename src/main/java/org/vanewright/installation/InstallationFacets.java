package org.vanewright.installation;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.adhesive.AdhesiveFacets;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.layout.LayoutFacets;

/** What an installation, and every look at it, is found by. */
@Component
public class InstallationFacets {
    private final InstallationService installations;
    private final LayoutFacets layouts;

    InstallationFacets(InstallationService installations, LayoutFacets layouts) {
        this.installations = installations;
        this.layouts = layouts;
    }

    /** Those of its layout, with the class of its adhesive. */
    public List<FacetValue> of(InstallationDocument installation) {
        List<FacetValue> facets = new ArrayList<>();
        installations.layout(installation).ifPresent(l -> facets.addAll(layouts.of(l.content())));
        installations.adhesiveRecord(installation).ifPresent(a -> facets.addAll(AdhesiveFacets.of(a.content())));
        return List.copyOf(facets);
    }
}
