package org.vanewright.inspection;

import org.springframework.stereotype.Component;
import org.vanewright.catalogue.RecordNews;

@Component
class InspectionNews extends RecordNews {
    InspectionNews(InspectionService inspections) {
        super("Inspection", "inspections", inspections);
    }
}
