package org.vanewright.airframe;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.catalogue.NewsItem;
import org.vanewright.catalogue.NewsSource;

@Component
class AirframeNews implements NewsSource {
    private final AirframeService airframes;

    AirframeNews(AirframeService airframes) {
        this.airframes = airframes;
    }

    @Override
    public List<NewsItem> latest(int limit) {
        return airframes.list(null, limit).items().stream()
                .map(r -> NewsItem.of("Airframe", "airframes", r))
                .toList();
    }
}
