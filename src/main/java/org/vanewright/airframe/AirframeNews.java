package org.vanewright.airframe;

import org.springframework.stereotype.Component;
import org.vanewright.catalogue.RecordNews;

@Component
class AirframeNews extends RecordNews {
    AirframeNews(AirframeService airframes) {
        super("Airframe", "airframes", airframes);
    }
}
