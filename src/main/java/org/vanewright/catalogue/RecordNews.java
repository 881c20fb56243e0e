package org.vanewright.catalogue;

import java.util.List;
import org.vanewright.record.RecordService;

/** The news of one kind of record. */
public abstract class RecordNews implements NewsSource {
    private final String kind;
    private final String plural;
    private final RecordService<?> records;

    /**
     * @param kind what people call one, such as {@code Airframe}
     * @param plural path of the feature's pages
     */
    protected RecordNews(String kind, String plural, RecordService<?> records) {
        this.kind = kind;
        this.plural = plural;
        this.records = records;
    }

    @Override
    public List<NewsItem> latest(int limit) {
        return records.list(null, limit).items().stream()
                .map(r -> NewsItem.of(kind, plural, r))
                .toList();
    }
}
