package org.vanewright.adhesive;

import java.util.List;
import java.util.Optional;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;

/** What an adhesive, and whatever is held by it, is found by. */
public final class AdhesiveFacets {
    private AdhesiveFacets() {}

    /** Its class, by what carries it. */
    public static List<FacetValue> of(AdhesiveDocument adhesive) {
        return Optional.ofNullable(adhesive.carrier()).map(c -> FacetValue.of(Facet.ADHESIVE, c, c.label())).stream()
                .toList();
    }
}
