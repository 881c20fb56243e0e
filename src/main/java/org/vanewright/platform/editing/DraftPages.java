package org.vanewright.platform.editing;

import java.util.Optional;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.vanewright.record.Draft;
import org.vanewright.record.DraftState;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;

/** What stands around the form of a draft: where it stands, what reviewers said, and what it came from. */
@Component
public class DraftPages {
    private final ObjectProvider<FieldRemarks> remarks;

    DraftPages(ObjectProvider<FieldRemarks> remarks) {
        this.remarks = remarks;
    }

    <T extends RecordContent> void describe(RecordService<T> records, Draft<T> draft, Model model) {
        model.addAttribute("draft", draft);
        model.addAttribute("version", draft.version());
        submitted(records, draft).ifPresent(r -> model.addAttribute("submitted", r));
        FieldRemarks known = remarks.getIfAvailable();
        if (known != null && draft.state() == DraftState.RETURNED) {
            model.addAttribute("remarks", known.of(draft));
        }
    }

    private static <T extends RecordContent> Optional<Revision<T>> submitted(RecordService<T> records, Draft<T> draft) {
        return draft.submitted() == null ? Optional.empty() : records.find(draft.submitted());
    }
}
