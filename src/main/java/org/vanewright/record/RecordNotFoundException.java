package org.vanewright.record;

import org.jspecify.annotations.Nullable;

/** There is no such record, or it has no such revision. */
public class RecordNotFoundException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String kind;
    private final String slug;
    private final @Nullable Integer revision;

    /**
     * @param kind what was looked for, in the singular, such as {@code "airframe"}
     * @param slug identity asked for
     * @param revision number asked for; absent when the record itself is missing
     */
    public RecordNotFoundException(String kind, String slug, @Nullable Integer revision) {
        super("There is no " + kind + " “" + slug + "”"
                + (revision == null ? "." : " with revision " + revision + "."));
        this.kind = kind;
        this.slug = slug;
        this.revision = revision;
    }

    public String kind() {
        return kind;
    }

    public String slug() {
        return slug;
    }

    public @Nullable Integer revision() {
        return revision;
    }
}
