package org.vanewright.layout;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.catalogue.NewsItem;
import org.vanewright.catalogue.NewsSource;

@Component
class LayoutNews implements NewsSource {
    private final LayoutService layouts;

    LayoutNews(LayoutService layouts) {
        this.layouts = layouts;
    }

    @Override
    public List<NewsItem> latest(int limit) {
        return layouts.list(null, limit).items().stream()
                .map(r -> NewsItem.of("Layout", "layouts", r))
                .toList();
    }
}
