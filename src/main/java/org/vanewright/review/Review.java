package org.vanewright.review;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.Revision;
import org.vanewright.record.check.CheckResult;

/**
 * Everything a reviewer needs to decide on one revision.
 *
 * @param plural of its kind, as in addresses
 * @param label of its kind
 * @param revision what is reviewed
 * @param comparison with what it was made from
 * @param claim who looks at it
 * @param checks what the automatic checks found
 * @param remarks so far
 * @param own whether it is the reader's own work
 * @param mayPublish whether the reader may publish it, as far as its authors are concerned
 * @param overtaken the revision published since the one it changes; null where none was
 */
public record Review(
        String plural,
        String label,
        Revision<?> revision,
        Comparison comparison,
        @Nullable Claim claim,
        List<CheckResult> checks,
        List<Remark> remarks,
        boolean own,
        boolean mayPublish,
        @Nullable Revision<?> overtaken) {
    /** Remarks on one field. */
    public List<Remark> on(String path) {
        return remarks.stream().filter(r -> r.field().equals(path)).toList();
    }
}
