package org.vanewright.printrun;

import org.springframework.stereotype.Component;
import org.vanewright.catalogue.RecordNews;

@Component
class PrintRunNews extends RecordNews {
    PrintRunNews(PrintRunService runs) {
        super("Print run", "print-runs", runs);
    }
}
