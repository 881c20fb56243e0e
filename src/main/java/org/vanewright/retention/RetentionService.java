package org.vanewright.retention;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.inference.survival.Lifetime;
import org.vanewright.engineering.inference.survival.LogRank;
import org.vanewright.engineering.inference.survival.Span;
import org.vanewright.inspection.LossDocument;

/** How long devices stay on, by what they are compared by. */
@Service
public class RetentionService {
    /** A device takes some hundred bytes. */
    private static final int KEPT_DEVICES = 120_000;

    /** More would be a list of names, not a comparison. */
    private static final int MOST_GROUPS = 20;

    private final Watch watch;
    private final Cache<String, RetentionStudy> kept = Caffeine.newBuilder()
            .maximumWeight(KEPT_DEVICES)
            .weigher(RetentionService::devices)
            .build();

    RetentionService(Watch watch) {
        this.watch = watch;
    }

    /** A study depends on nothing but the query and what is published, with what that pins. */
    public RetentionStudy study(RetentionQuery query) {
        return kept.get(query + " " + watch.state(), k -> work(query, watch.watched(), watch.older()));
    }

    private static int devices(String key, RetentionStudy study) {
        return 1 + study.groups().stream().mapToInt(GroupStudy::devices).sum();
    }

    private static RetentionStudy work(RetentionQuery query, List<WatchedInstallation> all, int older) {
        List<WatchedInstallation> seen =
                all.stream().filter(i -> !i.devices().isEmpty()).toList();
        boolean someReal = seen.stream().anyMatch(i -> !invented(i));
        List<WatchedInstallation> used = seen.stream()
                .filter(i -> query.invented() || !someReal || !invented(i))
                .toList();
        List<GroupStudy> groups = grouped(query, used).entrySet().stream()
                .map(e -> GroupStudies.of(e.getKey(), e.getValue()))
                .sorted(Comparator.comparing((GroupStudy g) -> -g.devices()).thenComparing(GroupStudy::name))
                .limit(MOST_GROUPS)
                .toList();
        return new RetentionStudy(
                query,
                groups,
                compared(groups),
                used.stream().anyMatch(RetentionService::invented),
                seen.size() - used.size(),
                all.stream().filter(i -> i.devices().isEmpty()).toList(),
                older);
    }

    private static boolean invented(WatchedInstallation installation) {
        return installation.revision().content().invented();
    }

    private static Map<String, List<WatchedInstallation>> grouped(
            RetentionQuery query, List<WatchedInstallation> installations) {
        Map<String, List<WatchedInstallation>> groups = new LinkedHashMap<>();
        for (WatchedInstallation each : installations) {
            Map<String, List<WatchedDevice>> own = new LinkedHashMap<>();
            for (WatchedDevice device : each.devices()) {
                WatchedDevice counted = counted(device, query.counted());
                if (counted != null) {
                    own.computeIfAbsent(query.by().of(each, device), k -> new ArrayList<>())
                            .add(counted);
                }
            }
            own.forEach((name, devices) ->
                    groups.computeIfAbsent(name, k -> new ArrayList<>()).add(each.withDevices(devices)));
        }
        return groups;
    }

    /** A loss that does not count ends the watch when the device was last seen; null where it never was. */
    private static @Nullable WatchedDevice counted(WatchedDevice device, Counted counted) {
        LossDocument loss = device.loss();
        if (loss == null || counted.counts(loss.cause())) {
            return device;
        }
        double seen = device.span().afterHours();
        return seen == 0 ? null : new WatchedDevice(device.at(), device.row(), Span.kept(seen), null, null);
    }

    private static @Nullable LogRank compared(List<GroupStudy> groups) {
        if (groups.size() < 2) {
            return null;
        }
        List<List<Lifetime>> lifetimes = groups.stream()
                .map(g -> g.installations().stream()
                        .flatMap(i -> i.devices().stream())
                        .map(d -> d.span().asFound())
                        .toList())
                .toList();
        return LogRank.of(lifetimes);
    }
}
