package org.vanewright.record;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.stereotype.Service;

/**
 * What lists say of published revisions and is work to find out. It is kept in the database, so that a list works out what
 * nobody has looked at yet, and nothing else. A public revision names exact public revisions only, so nothing of it changes.
 */
@Service
public class Summaries {
    private static final Logger LOG = LoggerFactory.getLogger(Summaries.class);

    private final SummaryRepository kept;
    private final CanonicalJson json;

    Summaries(SummaryRepository kept, CanonicalJson json) {
        this.kept = kept;
        this.json = json;
    }

    /**
     * One kind of summary.
     *
     * @param name such as {@code campaign}
     * @param version of the rules it is made by; counted up with every change of them
     * @param type a record that JSON can hold
     */
    public record Kind<S>(String name, int version, Class<S> type) {}

    /**
     * Summaries of public revisions, in two statements at most where all are known.
     *
     * @param work finds out about those that are not known; may leave some out
     */
    public <S> Map<RevisionRef, S> of(
            Kind<S> kind, Collection<RevisionRef> refs, Function<List<RevisionRef>, Map<RevisionRef, S>> work) {
        Map<RevisionRef, S> found = new HashMap<>();
        kept.find(kind.name(), kind.version(), refs)
                .forEach((ref, text) -> found.put(ref, json.read(text, kind.type())));
        List<RevisionRef> missing =
                refs.stream().distinct().filter(ref -> !found.containsKey(ref)).toList();
        if (!missing.isEmpty()) {
            Map<RevisionRef, S> made = work.apply(missing);
            keep(kind, made);
            found.putAll(made);
        }
        return found;
    }

    /** A list is shown all the same where nothing can be written. */
    private <S> void keep(Kind<S> kind, Map<RevisionRef, S> made) {
        try {
            made.forEach((ref, summary) -> kept.put(kind.name(), kind.version(), ref, json.write(summary)));
        } catch (DataAccessException e) {
            LOG.warn("what was found out for a list could not be kept", e);
        }
    }
}
