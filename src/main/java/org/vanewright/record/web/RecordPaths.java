package org.vanewright.record.web;

/** Parts of addresses that every feature's pages share. */
public final class RecordPaths {
    /** The identity of a record. */
    public static final String SLUG = "{slug:[a-z0-9-]{1,80}}";

    /** One exact revision of it. */
    public static final String REVISION = SLUG + "/revisions/{number:[0-9]{1,6}}";

    /** A draft, below the plural of its kind. */
    public static final String DRAFT = "drafts/{id:[0-9a-f-]{36}}";

    private RecordPaths() {}
}
