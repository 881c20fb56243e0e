package org.vanewright.layout;

import org.springframework.stereotype.Component;
import org.vanewright.record.demo.DemoData;
import org.vanewright.record.demo.DemoDocuments;

@Component
class LayoutDemo implements DemoData {
    private final DemoDocuments documents;
    private final LayoutService layouts;

    LayoutDemo(DemoDocuments documents, LayoutService layouts) {
        this.documents = documents;
        this.layouts = layouts;
    }

    @Override
    public int order() {
        return 30;
    }

    @Override
    public void load() {
        documents
                .read("layouts", LayoutDocument.class)
                .forEach((slug, document) -> documents.publish(
                        slug,
                        document,
                        layouts::latest,
                        d -> layouts.publish(d, DemoDocuments.CONTRIBUTOR, null),
                        (base, d) -> layouts.publishNext(base.ref(), d, DemoDocuments.CONTRIBUTOR)));
    }
}
