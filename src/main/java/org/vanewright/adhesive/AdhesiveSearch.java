package org.vanewright.adhesive;

import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.catalogue.SearchDescription;
import org.vanewright.catalogue.SearchSource;
import org.vanewright.platform.page.Numbers;
import org.vanewright.record.Revision;

@Component
class AdhesiveSearch implements SearchSource<AdhesiveDocument> {
    @Override
    public String kind() {
        return "adhesive";
    }

    @Override
    public String label() {
        return "Adhesive";
    }

    @Override
    public List<String> otherWords() {
        return List.of("tape", "glue", "bond");
    }

    @Override
    public SearchDescription describe(Revision<AdhesiveDocument> revision) {
        AdhesiveDocument adhesive = revision.content();
        return new SearchDescription(
                summary(adhesive),
                null,
                List.of(),
                Stream.of(adhesive.description(), adhesive.practice())
                        .flatMap(Stream::ofNullable)
                        .toList(),
                AdhesiveFacets.of(adhesive));
    }

    private static String summary(AdhesiveDocument adhesive) {
        Carrier carrier = adhesive.carrier();
        Double thickness = adhesive.thicknessMm();
        Double peel = adhesive.peelNPerCm();
        return (carrier == null ? "Adhesive" : carrier.label())
                + (thickness == null ? "" : ", " + Numbers.trimmed(thickness, 2) + " mm")
                + (peel == null ? ", peel strength not stated" : ", peel " + Numbers.trimmed(peel, 1) + " N/cm");
    }
}
