package org.vanewright.campaign.web;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.TuftGridDocument;
import org.vanewright.campaign.TuftSurveyDocument;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.tuft.AreaShares;
import org.vanewright.engineering.tuft.SeparationLine;
import org.vanewright.engineering.tuft.Tuft;
import org.vanewright.engineering.tuft.TuftDifference;
import org.vanewright.engineering.tuft.TuftState;
import org.vanewright.engineering.tuft.TuftSurvey;
import org.vanewright.engineering.tuft.Wings;
import org.vanewright.platform.page.Numbers;
import org.vanewright.platform.page.Units;

/** Tufts in words. */
final class TuftWords {
    private TuftWords() {}

    static String state(TuftState state) {
        return switch (state) {
            case STEADY -> "steady";
            case UNSTEADY -> "unsteady";
            case REVERSED -> "reversed";
            case NOT_SEEN -> "not seen";
        };
    }

    /** A grid with everything that defines it. */
    static String line(TuftGridDocument grid) {
        return String.join(
                " · ",
                title(grid),
                grid.stationsMm().stream().map(Numbers::plain).collect(Collectors.joining(", ")) + " mm",
                grid.chordFractions().stream().map(TuftWords::percent).collect(Collectors.joining(", "))
                        + " of the chord");
    }

    /** Where a grid is. */
    static String title(TuftGridDocument grid) {
        return or(grid.surface(), "no surface")
                + (grid.side() == null ? "" : grid.side() == SurfaceSide.UPPER ? ", upper side" : ", lower side")
                + wings(grid.wings());
    }

    private static String wings(@Nullable Wings wings) {
        return wings == null
                ? ""
                : switch (wings) {
                    case RIGHT -> ", right";
                    case LEFT -> ", left";
                    case BOTH -> ", right and left";
                };
    }

    /** Stations as a page shows them. */
    static String stations(TuftGridDocument grid, Units units) {
        List<String> words = grid.stationsMm().stream().map(units::span).toList();
        return String.join(", ", words);
    }

    /** A survey with everything that was recorded. */
    static String line(TuftSurveyDocument survey) {
        int photographs = survey.photographs().size();
        return Stream.of(
                        condition(survey),
                        or(survey.states(), "nothing seen"),
                        frames(survey),
                        photographs == 0 ? "" : photographs + (photographs == 1 ? " photograph" : " photographs"),
                        circumstances(survey, or(survey.at(), "")))
                .filter(w -> !w.isEmpty())
                .collect(Collectors.joining(" · "));
    }

    /** A survey without its letters. */
    static String shortLine(TuftSurveyDocument survey, Units units) {
        String more = circumstances(survey, units);
        return Stream.of(condition(survey), frames(survey), more)
                .filter(w -> !w.isEmpty())
                .collect(Collectors.joining(" · "));
    }

    /** That still frames were looked at, and whether a person has gone through what they propose. */
    static String frames(TuftSurveyDocument survey) {
        return survey.frames() == null
                ? ""
                : survey.frames().usedCount() + " still frames, "
                        + (survey.unconfirmed() ? "not gone through yet" : "gone through by a person");
    }

    /** What was not as in the plan, when it was, and the remark. */
    static String circumstances(TuftSurveyDocument survey, Units units) {
        return circumstances(survey, when(survey.at(), units));
    }

    /** A time as pages show it; what is none as it was typed. */
    private static String when(@Nullable String at, Units units) {
        try {
            return at == null ? "" : units.minute(Instant.parse(at));
        } catch (DateTimeParseException e) {
            return at;
        }
    }

    private static String circumstances(TuftSurveyDocument survey, String at) {
        return Stream.of(
                        survey.flaps() == null ? "" : "flaps " + survey.flaps(),
                        survey.power() == null ? "" : "power " + survey.power(),
                        at,
                        or(survey.remark(), ""))
                .filter(w -> !w.isEmpty())
                .collect(Collectors.joining(" · "));
    }

    /** Configuration and speed. */
    static String condition(TuftSurveyDocument survey) {
        return or(survey.configuration(), "no configuration")
                + (survey.indicatedAirspeedKt() == null
                        ? ""
                        : " at " + Numbers.trimmed(survey.indicatedAirspeedKt(), 1) + " kt indicated");
    }

    static String percent(double fraction) {
        return Numbers.trimmed(100 * fraction, 1) + " %";
    }

    /** A fraction as the grid deserves it: whole per cent. */
    static String share(double fraction) {
        return Math.round(100 * fraction) + " %";
    }

    /** A difference of fractions with its sign, in whole percentage points. */
    static String points(double difference) {
        long whole = Math.round(100 * difference);
        return whole == 0 ? "0" : String.format(Locale.ROOT, "%+d", whole).replace('-', '−');
    }

    static String change(TuftDifference.Change change) {
        return switch (change) {
            case SAME -> "the same";
            case BECAME_STEADY -> "became steady";
            case NO_LONGER_STEADY -> "no longer steady";
            case OTHERWISE -> "otherwise unsteady or reversed";
            case UNKNOWN -> "not seen both times";
        };
    }

    /** Side, station and chord fraction. */
    static String place(Tuft tuft, Units units) {
        return (tuft.left() ? "Left " : "Right ") + units.span(tuft.stationMm()) + ", " + percent(tuft.chordFraction());
    }

    /** Shares and line in a sentence or two. */
    static String description(TuftSurvey survey, SeparationLine line, Units units) {
        AreaShares shares = survey.shares();
        if (shares.seen() == 0) {
            return "No tuft was seen.";
        }
        String points = line.points().stream()
                .map(p -> (p.left() ? "left " : "right ") + units.span(p.stationMm()) + " from "
                        + percent(p.chordFraction()))
                .collect(Collectors.joining(", "));
        return "Of the area seen, " + share(shares.steady()) + " steady, " + share(shares.unsteady()) + " unsteady, "
                + share(shares.reversed()) + " reversed. "
                + (points.isEmpty() ? "No separation line." : "Not steady to the rear: " + points + ".");
    }

    /** How far forward the line reaches, and at how many stations. */
    static String line(SeparationLine line) {
        if (line.points().isEmpty()) {
            return "none";
        }
        DoubleSummaryStatistics all = line.points().stream()
                .mapToDouble(SeparationLine.Point::chordFraction)
                .summaryStatistics();
        String range = all.getMin() == all.getMax()
                ? percent(all.getMin())
                : percent(all.getMin()) + " to " + percent(all.getMax());
        int count = line.points().size();
        return range + ", at " + count + (count == 1 ? " station" : " stations");
    }

    /** A difference in a sentence. */
    static String sentence(TuftDifference difference) {
        int better = difference.count(TuftDifference.Change.BECAME_STEADY);
        int worse = difference.count(TuftDifference.Change.NO_LONGER_STEADY);
        int both = difference.before().seen();
        if (both == 0) {
            return "No tuft was seen both times.";
        }
        return tufts(better) + " became steady, " + worse + (worse == 1 ? " is" : " are")
                + " no longer steady, of " + both + " seen both times. Steady area "
                + share(difference.before().steady()) + " before, "
                + share(difference.after().steady()) + " after.";
    }

    static String tufts(int count) {
        return count + (count == 1 ? " tuft" : " tufts");
    }

    private static String or(@Nullable String text, String otherwise) {
        return text == null || text.isBlank() ? otherwise : Objects.requireNonNull(text);
    }
}
