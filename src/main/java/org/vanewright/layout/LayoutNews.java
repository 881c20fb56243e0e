package org.vanewright.layout;

import org.springframework.stereotype.Component;
import org.vanewright.catalogue.RecordNews;

@Component
class LayoutNews extends RecordNews {
    LayoutNews(LayoutService layouts) {
        super("Layout", "layouts", layouts);
    }
}
