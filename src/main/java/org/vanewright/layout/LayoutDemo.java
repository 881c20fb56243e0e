package org.vanewright.layout;

import org.springframework.stereotype.Component;
import org.vanewright.record.demo.DemoDocuments;
import org.vanewright.record.demo.DemoRecords;

@Component
class LayoutDemo extends DemoRecords<LayoutDocument> {
    LayoutDemo(DemoDocuments documents, LayoutService layouts) {
        super(documents, layouts, "layouts", LayoutDocument.class, 30);
    }
}
