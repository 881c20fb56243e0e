package org.vanewright.record;

import java.util.List;

/** Everything public of one kind, read piece by piece whoever asks. */
public final class PublicRecord<T extends RecordContent> {
    private final RevisionRepositoryPublic<T> records;

    PublicRecord(RevisionRepositoryPublic<T> records) {
        this.records = records;
    }

    /** Every record that has a public revision, in the order of characters. */
    public List<String> slugs() {
        return records.slugs();
    }

    /** Every public revision of some records, by slug and number; the caller asks for as many as it can hold. */
    public List<PublicDocument<T>> of(List<String> slugs) {
        return records.documents(slugs);
    }

    /** Tells apart any two states of what is public, at the price of counting. */
    public PublicCount count() {
        return records.count();
    }
}
