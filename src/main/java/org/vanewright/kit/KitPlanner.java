package org.vanewright.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.account.BaseUrl;
import org.vanewright.account.InstanceSettings;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.ImportOrigin;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordService;
import org.vanewright.record.RecordState;
import org.vanewright.record.RecordUse;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.Standing;
import org.vanewright.record.provenance.RevisionProvenance;

/**
 * Finds everything a layout's kit holds. Everything is named as at its origin, so that the kit of an imported layout is
 * the kit it came in.
 */
@Component
class KitPlanner {
    private static final int MOST_REVISIONS = 300;

    private final Records records;
    private final List<FlownCampaigns> campaigns;
    private final KitRepository kits;
    private final CanonicalJson json;
    private final InstanceSettings instance;
    private final BaseUrl baseUrl;

    KitPlanner(
            Records records,
            List<FlownCampaigns> campaigns,
            KitRepository kits,
            CanonicalJson json,
            InstanceSettings instance,
            BaseUrl baseUrl) {
        this.records = records;
        this.campaigns = campaigns;
        this.kits = kits;
        this.json = json;
        this.instance = instance;
        this.baseUrl = baseUrl;
    }

    /** Campaigns that fly a revision now, in order of name. */
    List<RevisionRef> flying(RevisionRef layout) {
        return sorted(campaigns.stream().flatMap(c -> c.flying(layout).stream()).toList());
    }

    static List<RevisionRef> sorted(List<RevisionRef> refs) {
        return refs.stream()
                .distinct()
                .sorted(Comparator.comparing(RevisionRef::slug).thenComparing(RevisionRef::revision))
                .toList();
    }

    KitPlan plan(Revision<?> layout, List<RevisionRef> results) {
        Gathering gathering = new Gathering();
        gathering.add("layouts", layout.ref());
        results.forEach(ref -> gathering.add("campaigns", ref));
        List<KitRevision<?>> all = List.copyOf(gathering.found.values());
        StringBuilder key = new StringBuilder(layout.ref() + "\n" + results + "\n");
        all.forEach(r -> key.append(json.write(r.entry()))
                .append('\n')
                .append(json.sha256(r.provenance()))
                .append('\n'));
        return new KitPlan(layout, results, all, key.toString());
    }

    RecordService<?> service(String plural) {
        return records.ofPlural(plural).orElseThrow(() -> new RecordNotFoundException("kind of record", plural, null));
    }

    /** Collects revisions, each after those it names. */
    private final class Gathering {
        private final Map<RecordUse, KitRevision<?>> found = new LinkedHashMap<>();

        KitIndex.@Nullable Entry add(String plural, RevisionRef ref) {
            RecordUse use = new RecordUse(plural, ref);
            KitRevision<?> there = found.get(use);
            if (there != null) {
                return there.entry();
            }
            if (found.size() >= MOST_REVISIONS) {
                throw new InvalidInputException(new FieldProblem(
                        "results", "more than " + MOST_REVISIONS + " revisions", "fewer results in one kit"));
            }
            KitRevision<?> made = make(service(plural), ref);
            found.put(use, made);
            return made.entry();
        }

        private <T extends RecordContent> KitRevision<T> make(RecordService<T> service, RevisionRef ref) {
            Revision<T> here = service.exactly(ref);
            List<RecordUse> names = new ArrayList<>();
            List<RecordUse> meant = new ArrayList<>();
            service.imports().asHashed(here).relocated(use -> kept(use, names));
            here.content().relocated(use -> kept(use, meant));
            Map<RecordUse, KitIndex.Reference> references = new LinkedHashMap<>();
            for (int i = 0; i < names.size(); i++) {
                RecordUse name = names.get(i);
                KitIndex.Entry entry = add(meant.get(i).plural(), meant.get(i).ref());
                references.put(
                        name,
                        new KitIndex.Reference(
                                name.plural(),
                                name.ref().slug(),
                                name.ref().revision(),
                                entry == null ? null : entry.path()));
            }
            Revision<T> there = there(here);
            return new KitRevision<>(
                    service,
                    here,
                    there,
                    service.imports().canonicalJson(here),
                    provenance(service, here, there),
                    entry(service, here, there, List.copyOf(references.values())));
        }
    }

    private static RecordUse kept(RecordUse use, List<RecordUse> uses) {
        uses.add(use);
        return use;
    }

    /** As it was when it was published; what became of it later is said beside it. */
    private static <T extends RecordContent> Revision<T> there(Revision<T> here) {
        ImportOrigin origin = here.standing().origin();
        Standing s = here.standing();
        Standing published = new Standing(
                s.contributorId(),
                s.licence(),
                s.summary(),
                null,
                origin == null ? s.publishedAt() : origin.publishedAt(),
                s.publishedBy(),
                null,
                null,
                null,
                origin);
        return new Revision<>(
                origin == null ? here.slug() : origin.slug(),
                origin == null ? here.number() : origin.revision(),
                RecordState.PUBLISHED,
                here.content(),
                here.sha256(),
                here.contributor(),
                here.createdAt(),
                origin == null ? here.derivedFrom() : origin.derivedFrom(),
                published);
    }

    private <T extends RecordContent> String provenance(RecordService<T> service, Revision<T> here, Revision<T> there) {
        return kits.provenance(service.plural(), here.ref())
                .orElseGet(() -> json.write(RevisionProvenance.of(baseUrl.of("/"), service.plural(), there)));
    }

    private <T extends RecordContent> KitIndex.Entry entry(
            RecordService<T> service, Revision<T> here, Revision<T> there, List<KitIndex.Reference> references) {
        ImportOrigin origin = here.standing().origin();
        String stem = "records/" + service.plural() + "/" + there.slug() + "-r" + there.number() + "-"
                + there.sha256().substring(0, 8);
        return new KitIndex.Entry(
                service.plural(),
                there.slug(),
                there.number(),
                stem + ".json",
                there.sha256(),
                stem + ".provenance.json",
                origin == null ? instance.name() : origin.instance(),
                origin == null ? baseUrl.of("") : origin.url(),
                there.content().name(),
                there.contributor(),
                there.createdAt(),
                there.standing().publishedAt(),
                there.standing().licence() == null
                        ? null
                        : there.standing().licence().spdx(),
                there.derivedFrom(),
                here.state() == RecordState.WITHDRAWN
                        ? here.standing().reason()
                        : origin == null ? null : origin.withdrawn(),
                references);
    }
}
