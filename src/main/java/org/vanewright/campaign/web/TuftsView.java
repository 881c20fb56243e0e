package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.TuftGridDocument;
import org.vanewright.campaign.TuftSurveyDocument;
import org.vanewright.campaign.Tufts;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.tuft.AreaShares;
import org.vanewright.engineering.tuft.SeparationLine;
import org.vanewright.engineering.tuft.Tuft;
import org.vanewright.engineering.tuft.TuftDifference;
import org.vanewright.engineering.tuft.TuftState;
import org.vanewright.engineering.tuft.TuftSurvey;
import org.vanewright.platform.page.Units;
import org.vanewright.record.photograph.PhotographUse;

/**
 * What tufts showed, grid by grid.
 *
 * @param title where the grid is
 * @param facts what it can tell
 * @param rows one for each survey
 * @param differences from the unmodified aircraft, one for each other configuration and speed
 * @param speeds maps, slowest speed last
 */
public record TuftsView(String title, String facts, List<Row> rows, List<Difference> differences, List<Speed> speeds) {
    /** A survey in figures. */
    public record Row(
            String configuration,
            String speed,
            String steady,
            String unsteady,
            String reversed,
            String notSeen,
            String line,
            String remark,
            List<PhotographUse> photographs) {}

    /** A configuration against the unmodified aircraft at one speed, in percentage points of the area seen both times. */
    public record Difference(
            String configurations, String speed, String steady, String unsteady, String reversed, String tufts) {}

    /** Maps of one speed. */
    public record Speed(String speed, List<TuftMap> single, List<Pair> pairs) {}

    /** Two maps of one speed, to be laid side by side or over one another. */
    public record Pair(String id, String first, String second, TuftMap before, TuftMap after, TuftMap change) {}

    /** Every grid that fits the aircraft; none without an aircraft. */
    static List<TuftsView> of(CampaignDocument campaign, @Nullable AirframeDocument airframe, Units units) {
        List<TuftsView> views = new ArrayList<>();
        for (int i = 0; airframe != null && i < campaign.tufts().size(); i++) {
            TuftGridDocument grid = campaign.tufts().get(i);
            try {
                views.add(new Builder(campaign, grid, new TuftMaps(airframe, grid, units), "tufts-" + i + "-", units)
                        .view());
            } catch (InvalidInputException e) {
                views.add(unfit(grid, e));
            }
        }
        return views;
    }

    private static TuftsView unfit(TuftGridDocument grid, InvalidInputException e) {
        String why = "This grid cannot be drawn: " + e.problems().get(0).field() + " must be "
                + e.problems().get(0).allowed() + ".";
        return new TuftsView(TuftWords.title(grid), why, List.of(), List.of(), List.of());
    }

    private record Builder(
            CampaignDocument campaign, TuftGridDocument grid, TuftMaps maps, String prefix, Units units) {
        TuftsView view() {
            double area = maps.grid().areaMm2();
            double largest = maps.grid().tufts().stream()
                    .mapToDouble(Tuft::areaMm2)
                    .max()
                    .orElse(0);
            String facts = maps.grid().size() + " tufts stand for " + units.area(area / 1e6)
                    + "; the largest cell is " + TuftWords.percent(Math.round(1000 * largest / area) / 1000.0)
                    + " of it. Stations " + TuftWords.stations(grid, units) + ".";
            List<Difference> differences = new ArrayList<>();
            List<Speed> speeds = new ArrayList<>();
            bySpeed().forEach((knots, surveys) -> speeds.add(speed(knots, surveys, differences)));
            return new TuftsView(
                    TuftWords.title(grid),
                    facts,
                    grid.surveys().stream().map(this::row).toList(),
                    differences,
                    speeds);
        }

        /** The last survey of each configuration at each whole knot, fastest first, in the plan's order. */
        private Map<Long, Map<String, TuftSurveyDocument>> bySpeed() {
            Map<Long, Map<String, TuftSurveyDocument>> found = new TreeMap<>(Comparator.reverseOrder());
            for (String key : campaign.plan().keys()) {
                for (TuftSurveyDocument each : grid.surveys()) {
                    if (key.equals(each.configuration())) {
                        found.computeIfAbsent(knots(each), k -> new LinkedHashMap<>())
                                .put(key, each);
                    }
                }
            }
            return found;
        }

        private static long knots(TuftSurveyDocument survey) {
            return Math.round(Objects.requireNonNullElse(survey.indicatedAirspeedKt(), 0.0));
        }

        private Row row(TuftSurveyDocument document) {
            TuftSurvey survey = Tufts.survey(maps.grid(), document);
            AreaShares shares = survey.shares();
            boolean seen = shares.seen() > 0;
            return new Row(
                    name(String.valueOf(document.configuration())),
                    units.speed(document.indicatedAirspeedKt()),
                    seen ? TuftWords.share(shares.steady()) : "–",
                    seen ? TuftWords.share(shares.unsteady()) : "–",
                    seen ? TuftWords.share(shares.reversed()) : "–",
                    shares.seen() == shares.tufts()
                            ? "none"
                            : TuftWords.tufts(shares.tufts() - shares.seen()) + ", "
                                    + TuftWords.share(shares.notSeen()),
                    TuftWords.line(SeparationLine.of(survey)),
                    Stream.of(TuftWords.frames(document), TuftWords.circumstances(document, units))
                            .filter(w -> !w.isEmpty())
                            .collect(Collectors.joining(" · ")),
                    campaign.photographs().stream()
                            .filter(use -> document.photographs().contains(String.valueOf(use.sha256())))
                            .toList());
        }

        private Speed speed(long knots, Map<String, TuftSurveyDocument> surveys, List<Difference> differences) {
            String speed = units.speed((double) knots);
            List<String> keys = campaign.plan().keys();
            TuftSurveyDocument base = keys.isEmpty() ? null : surveys.get(keys.get(0));
            List<TuftMap> single = new ArrayList<>();
            List<Pair> pairs = new ArrayList<>();
            surveys.forEach((key, each) -> {
                String id = prefix + knots + "-" + key;
                if (base == null || surveys.size() == 1) {
                    single.add(map(id, each));
                } else if (each != base) {
                    TuftDifference difference =
                            TuftDifference.of(Tufts.survey(maps.grid(), base), Tufts.survey(maps.grid(), each));
                    differences.add(difference(key, speed, difference));
                    String first = String.valueOf(base.configuration());
                    pairs.add(new Pair(
                            id,
                            name(first),
                            name(key),
                            map(id + "-before", base),
                            map(id + "-after", each),
                            maps.change(id + "-change", "From " + first + " to " + key, difference)));
                }
            });
            return new Speed(speed, single, pairs);
        }

        private TuftMap map(String id, TuftSurveyDocument survey) {
            String title = name(String.valueOf(survey.configuration())) + " at "
                    + units.speed(survey.indicatedAirspeedKt()) + " indicated";
            return maps.states(id, title, Tufts.survey(maps.grid(), survey), null);
        }

        private Difference difference(String key, String speed, TuftDifference d) {
            return new Difference(
                    campaign.plan().keys().get(0) + " to " + key,
                    speed,
                    TuftWords.points(d.change(TuftState.STEADY)),
                    TuftWords.points(d.change(TuftState.UNSTEADY)),
                    TuftWords.points(d.change(TuftState.REVERSED)),
                    d.count(TuftDifference.Change.BECAME_STEADY)
                            + " became steady, " + d.count(TuftDifference.Change.NO_LONGER_STEADY)
                            + " no longer, of " + d.before().seen());
        }

        private String name(String key) {
            return campaign.plan()
                    .configuration(key)
                    .map(c -> key + (c.name() == null ? "" : ": " + c.name()))
                    .orElse(key);
        }
    }
}
