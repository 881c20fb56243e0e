package org.vanewright.kit;

import java.util.List;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;

/**
 * A revision on its way into a kit.
 *
 * @param service of its kind
 * @param here the revision as it stands here
 * @param there the same under its slug and number at its origin, as published
 * @param canonical its document as it is hashed
 * @param provenance its history as JSON
 * @param entry of the index
 */
record KitRevision<T extends RecordContent>(
        RecordService<T> service,
        Revision<T> here,
        Revision<T> there,
        String canonical,
        String provenance,
        KitIndex.Entry entry) {
    /** Folder of its files. */
    String folder() {
        return service.plural() + "/" + there.slug() + "-r" + there.number();
    }

    List<KitFile> files(List<KitFiles<?>> sources) {
        return sources.stream()
                .filter(source -> source.kind().equals(service.kind()))
                .flatMap(source -> ofKind(source).of(there).stream())
                .toList();
    }

    @SuppressWarnings("unchecked") // the kind names the type
    private KitFiles<T> ofKind(KitFiles<?> source) {
        return (KitFiles<T>) source;
    }
}
