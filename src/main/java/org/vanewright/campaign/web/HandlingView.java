package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.HandlingDocument;

/**
 * Ratings of one task in one configuration. They are ordinal: medians and counts, never means.
 *
 * @param configuration its key
 * @param task what was flown
 * @param median in words, such as {@code 4} or {@code between 4 and 5}
 * @param counts how often each rating was given, such as {@code 4 (twice), 5 (once)}
 * @param remarks in the pilots' words
 */
public record HandlingView(String configuration, String task, String median, String counts, List<String> remarks) {
    static List<HandlingView> of(CampaignDocument campaign) {
        Map<List<String>, List<HandlingDocument>> groups = new LinkedHashMap<>();
        campaign.handling()
                .forEach(h -> groups.computeIfAbsent(
                                List.of(String.valueOf(h.configuration()), String.valueOf(h.task())),
                                k -> new ArrayList<>())
                        .add(h));
        return groups.entrySet().stream()
                .map(e -> view(e.getKey().get(0), e.getKey().get(1), e.getValue()))
                .toList();
    }

    private static HandlingView view(String configuration, String task, List<HandlingDocument> all) {
        List<Integer> ratings = all.stream()
                .map(HandlingDocument::rating)
                .filter(Objects::nonNull)
                .sorted()
                .toList();
        List<String> remarks = all.stream()
                .map(HandlingDocument::remark)
                .filter(Objects::nonNull)
                .toList();
        return new HandlingView(configuration, task, median(ratings), counts(ratings), remarks);
    }

    static String median(List<Integer> sorted) {
        if (sorted.isEmpty()) {
            return "–";
        }
        int lower = sorted.get((sorted.size() - 1) / 2);
        int upper = sorted.get(sorted.size() / 2);
        return lower == upper ? String.valueOf(lower) : "between " + lower + " and " + upper;
    }

    private static String counts(List<Integer> sorted) {
        Map<Integer, Integer> counts = new LinkedHashMap<>();
        sorted.forEach(r -> counts.merge(r, 1, Integer::sum));
        List<String> words = new ArrayList<>();
        counts.forEach((rating, count) -> words.add(rating + " (" + times(count) + ")"));
        return String.join(", ", words);
    }

    private static String times(int count) {
        return switch (count) {
            case 1 -> "once";
            case 2 -> "twice";
            default -> count + " times";
        };
    }
}
