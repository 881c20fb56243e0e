package org.vanewright.record.demo;

import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;

/** The demonstration data of one feature: the documents of one folder, published through its service. */
public abstract class DemoRecords<T extends RecordContent> implements DemoData {
    private final DemoDocuments documents;
    private final RecordService<T> records;
    private final String plural;
    private final Class<T> type;
    private final int order;

    /**
     * @param plural the folder under {@code db/demo}
     * @param order lower ones load first
     */
    protected DemoRecords(DemoDocuments documents, RecordService<T> records, String plural, Class<T> type, int order) {
        this.documents = documents;
        this.records = records;
        this.plural = plural;
        this.type = type;
        this.order = order;
    }

    @Override
    public int order() {
        return order;
    }

    @Override
    public void load() {
        documents.read(plural, type).forEach((slug, document) -> documents.publish(slug, document, records));
    }
}
