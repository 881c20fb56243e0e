package org.vanewright.catalogue.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.vanewright.catalogue.Bands;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.catalogue.MeasuredEffects.Effect;
import org.vanewright.catalogue.MeasuredEffects.Flights;
import org.vanewright.catalogue.SearchDescription;
import org.vanewright.catalogue.SearchSource;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;

/** Makes the entry of a published revision. */
final class EntryMaker {
    private static final Logger LOG = LoggerFactory.getLogger(EntryMaker.class);
    private static final int LONGEST_SUMMARY = 400;
    private static final int LONGEST_EFFECT = 1000;
    private static final int LONGEST_LABEL = 200;
    private static final int USUAL_PROMINENCE = 100;
    private static final int MOST_VALUES = 40;
    private static final double LARGEST_CHANGE = 1000;
    private static final SearchDescription NOTHING = new SearchDescription("", null, List.of(), List.of(), List.of());

    private EntryMaker() {}

    static <T extends RecordContent> SearchEntry entry(
            RecordService<T> service, Revision<T> revision, @Nullable SearchSource<T> source, List<Flights> flights) {
        SearchDescription described = source == null ? NOTHING : described(source, revision);
        String label = source == null ? label(service.kind()) : source.label();
        List<FacetValue> facets = new ArrayList<>(described.facets());
        facets.add(FacetValue.named(Facet.KIND, label));
        flights.forEach(f -> facets.addAll(facets(f)));
        List<FacetValue> sorted = facets.stream()
                .map(EntryMaker::shortened)
                .sorted()
                .distinct()
                .limit(MOST_VALUES)
                .toList();
        Optional<Effect> effect =
                flights.stream().flatMap(f -> f.mostPrecise().stream()).findFirst();
        WordBag words = new WordBag()
                .add(Weight.NAME, revision.content().name())
                .addAll(Weight.SUBJECT, described.subjects())
                .addAll(Weight.SUBJECT, sorted.stream().map(FacetValue::label).toList())
                .add(Weight.NOTE, described.summary())
                .addAll(Weight.NOTE, described.notes())
                .addAll(Weight.NOTE, effect.map(Effect::sentence).stream().toList())
                .add(Weight.KIND, revision.contributor())
                .addAll(Weight.KIND, source == null ? List.of() : source.otherWords());
        return new SearchEntry(
                service.kind(),
                revision.slug(),
                revision.number(),
                revision.content().name(),
                cut(described.summary(), LONGEST_SUMMARY),
                described.picture(),
                revision.content().invented(),
                revision.contributor(),
                revision.shownAt(),
                effect.map(EntryMaker::ppm).orElse(SearchEntry.NO_EFFECT),
                effect.map(e -> cut(e.sentence(), LONGEST_EFFECT)).orElse(null),
                source == null ? USUAL_PROMINENCE : source.prominence(),
                sorted,
                words);
    }

    /** Whatever goes wrong with a description, the record is published and found by its name. */
    private static <T extends RecordContent> SearchDescription described(SearchSource<T> source, Revision<T> revision) {
        try {
            return source.describe(revision);
        } catch (DataAccessException e) {
            throw e;
        } catch (RuntimeException e) {
            LOG.error("{} {} is found by its name only", source.kind(), revision.ref(), e);
            return NOTHING;
        }
    }

    private static List<FacetValue> facets(Flights flights) {
        List<FacetValue> facets = new ArrayList<>();
        facets.add(
                flights.flown()
                        ? new FacetValue(Facet.FLOWN, "flown", "Flown", 0)
                        : new FacetValue(Facet.FLOWN, "not-flown", "Not flown", 1));
        for (Effect effect : flights.effects()) {
            facets.add(Bands.CHANGE.of(100 * Math.abs(effect.relative())));
            facets.add(
                    effect.excludesZero()
                            ? new FacetValue(Facet.INTERVAL, "excludes-zero", "Excludes zero", 0)
                            : new FacetValue(Facet.INTERVAL, "includes-zero", "Includes zero", 1));
        }
        return facets;
    }

    private static FacetValue shortened(FacetValue value) {
        return new FacetValue(value.facet(), value.choice(), cut(value.label(), LONGEST_LABEL), value.place());
    }

    private static int ppm(Effect effect) {
        return (int) Math.round(1e6 * Math.min(LARGEST_CHANGE, Math.abs(effect.relative())));
    }

    private static String label(String kind) {
        String words = kind.replace('-', ' ');
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String cut(String text, int longest) {
        return text.length() <= longest ? text : text.substring(0, longest - 1) + "…";
    }
}
