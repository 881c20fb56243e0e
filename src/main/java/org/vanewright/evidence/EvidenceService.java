package org.vanewright.evidence;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.evidence.EvidenceStudy.Group;
import org.vanewright.evidence.EvidenceStudy.Item;
import org.vanewright.platform.HeapShare;

/** Looks at all published comparisons of one quantity. */
@Service
public class EvidenceService {
    private static final Comparator<Group> FLOWN_AND_LARGE_FIRST = Comparator.comparing(
                    (Group g) -> g.alike().invented())
            .thenComparing(Comparator.comparingInt(Group::campaigns).reversed())
            .thenComparing(g -> g.alike().key());

    /** In knots, feet a minute or per cent; a weight of its inverse square would silence all others. */
    private static final double LEAST_ERROR = 1e-6;

    /** Bytes of a comparison in a study, about. */
    private static final int ITEM = 400;

    private static final int BESIDES = 10;

    private final Findings findings;
    private final Cache<String, EvidenceStudy> kept = Caffeine.newBuilder()
            .maximumWeight(HeapShare.bytes(40) / ITEM)
            .weigher(
                    (String key, EvidenceStudy study) -> BESIDES + study.items().size())
            .build();

    EvidenceService(Findings findings) {
        this.findings = findings;
    }

    /** The same object while nothing else is published. */
    public EvidenceStudy study(EvidenceQuery query) {
        String key = findings.state() + " " + query;
        EvidenceStudy before = kept.getIfPresent(key);
        if (before != null) {
            return before;
        }
        EvidenceStudy study = study(query, findings.all());
        // While campaigns are still being looked at, the next view knows more.
        if (study.known().awaited() == 0) {
            kept.put(key, study);
        }
        return study;
    }

    private static EvidenceStudy study(EvidenceQuery query, Findings.Known known) {
        List<Finding> asked = known.findings().stream()
                .filter(f -> f.quantity() == query.quantity())
                .toList();
        List<Group> groups = groups(asked);
        Group wanted = groups.stream()
                .filter(g -> g.alike().key().equals(query.group()))
                .findFirst()
                .orElse(null);
        boolean missing = query.group() != null && wanted == null;
        Group group = wanted != null || groups.isEmpty() ? wanted : groups.get(0);
        List<Item> items = items(asked, group, query);
        List<Item> counted = items.stream().filter(Item::counted).toList();
        boolean enough = counted.size() >= EvidenceStudy.FEWEST;
        return new EvidenceStudy(
                query,
                known,
                items,
                groups,
                group,
                missing,
                enough ? summary(counted, query) : null,
                enough ? null : refusal(counted.size(), group));
    }

    private static List<Group> groups(List<Finding> findings) {
        Map<Alike, List<Finding>> byKind = new LinkedHashMap<>();
        findings.forEach(
                f -> byKind.computeIfAbsent(Alike.of(f), k -> new ArrayList<>()).add(f));
        return byKind.entrySet().stream()
                .map(e -> new Group(
                        e.getKey(),
                        (int) e.getValue().stream()
                                .map(Finding::campaign)
                                .distinct()
                                .count(),
                        e.getValue().size()))
                .sorted(FLOWN_AND_LARGE_FIRST)
                .toList();
    }

    private static List<Item> items(List<Finding> findings, @Nullable Group group, EvidenceQuery query) {
        Set<String> counted = new HashSet<>();
        List<Item> items = new ArrayList<>();
        // In the order of each campaign's plan, so that no result decides which of several counts.
        for (Finding finding : findings) {
            Alike alike = Alike.of(finding);
            Scale.Change change = query.scale().of(finding);
            List<String> why = new ArrayList<>();
            if (group != null) {
                why.addAll(group.alike().differencesOf(alike));
            }
            if (change == null) {
                why.add(
                        "the unmodified aircraft’s mean cannot be told from nothing, so there is no change in per cent");
            }
            if (change != null && change.standardError() < LEAST_ERROR) {
                why.add("its test points agree more closely than any instrument reads");
            }
            if (why.isEmpty() && !counted.add(finding.campaign().slug())) {
                why.add("another configuration of the same campaign, with the same unmodified flights");
            }
            items.add(new Item(finding, alike, change, group != null && why.isEmpty(), why));
        }
        return items;
    }

    private static Summary summary(List<Item> counted, EvidenceQuery query) {
        int aircraft = (int) counted.stream()
                .map(i -> i.finding().airframe().slug())
                .distinct()
                .count();
        return Summary.of(
                counted.stream()
                        .map(Item::change)
                        .flatMap(Stream::ofNullable)
                        .map(Scale.Change::effect)
                        .toList(),
                query,
                aircraft);
    }

    private static String refusal(int campaigns, @Nullable Group group) {
        String have = campaigns == 0
                ? "No comparable campaign has been published"
                : "Only " + campaigns + (campaigns == 1 ? " comparable campaign has" : " comparable campaigns have")
                        + " been published";
        return have + (group == null ? "" : " (" + group.alike().words() + ")") + "; a summary needs "
                + EvidenceStudy.FEWEST
                + ", since fewer say next to nothing of how much campaigns differ. Each stands for itself.";
    }
}
