package org.vanewright.adhesive;

import org.springframework.stereotype.Component;
import org.vanewright.catalogue.RecordNews;

@Component
class AdhesiveNews extends RecordNews {
    AdhesiveNews(AdhesiveService adhesives) {
        super("Adhesive", "adhesives", adhesives);
    }
}
