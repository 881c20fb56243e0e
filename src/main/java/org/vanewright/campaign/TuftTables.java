package org.vanewright.campaign;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.export.Columns;
import org.vanewright.export.RecordTable;

/** Tuft surveys in the export. */
final class TuftTables {
    private TuftTables() {}

    /** A survey with the numbers of its grid and itself. */
    private record Survey(int grid, int survey, TuftGridDocument of, TuftSurveyDocument is) {
        int count(char state) {
            String states = is.states();
            return states == null
                    ? 0
                    : (int) states.chars().filter(c -> c == state).count();
        }
    }

    /** One tuft as it was seen in one survey. */
    private record SeenTuft(Survey of, boolean left, double stationMm, double chordFraction, char state) {}

    static RecordTable<CampaignDocument, ?> surveys() {
        return RecordTable.ofParts(
                CampaignTables.MAIN,
                "tuft_surveys",
                "What was seen of a grid of tufts at one condition",
                "number",
                TuftTables::surveysOf,
                new Columns<Survey>()
                        .whole("grid", "Number of the grid", Survey::grid)
                        .whole("survey", "Number of the survey within the grid", Survey::survey)
                        .text("surface", "Name of the surface", s -> s.of().surface())
                        .choice("side", "Of the surface", s -> s.of().side())
                        .text("mark", "Mark of the configuration flown", s -> s.is().configuration())
                        .number("indicated_airspeed_kt", "kt", "As read", s -> s.is().indicatedAirspeedKt())
                        .text("flaps", "Where not as in the plan", s -> s.is().flaps())
                        .text("power", "Where not as in the plan", s -> s.is().power())
                        .timeText("at", "When, to the second", s -> s.is().at())
                        .whole("steady", "Tufts that were steady", s -> s.count('S'))
                        .whole("unsteady", "Tufts that were unsteady", s -> s.count('U'))
                        .whole("reversed", "Tufts that were reversed", s -> s.count('R'))
                        .whole("not_seen", "Tufts that were not seen", s -> s.count('-'))
                        .text("remark", "Anything else", s -> s.is().remark()));
    }

    private static List<Survey> surveysOf(CampaignDocument campaign) {
        List<Survey> all = new ArrayList<>();
        for (int g = 0; g < campaign.tufts().size(); g++) {
            TuftGridDocument grid = campaign.tufts().get(g);
            for (int s = 0; s < grid.surveys().size(); s++) {
                all.add(new Survey(g + 1, s + 1, grid, grid.surveys().get(s)));
            }
        }
        return all;
    }

    static RecordTable<CampaignDocument, ?> tufts() {
        return RecordTable.ofParts(
                CampaignTables.MAIN,
                "tufts",
                "Every tuft of every survey",
                "number",
                campaign -> surveysOf(campaign).stream()
                        .flatMap(s -> tuftsOf(s).stream())
                        .toList(),
                new Columns<SeenTuft>()
                        .whole("grid", "Number of the grid", t -> t.of().grid())
                        .whole("survey", "Number of the survey within the grid", t -> t.of().survey())
                        .text("wing", "LEFT or RIGHT", t -> t.left() ? "LEFT" : "RIGHT")
                        .number("station_mm", "mm", "Span station", SeenTuft::stationMm)
                        .ratio("chord_fraction", "Of the local chord", SeenTuft::chordFraction)
                        .text(
                                "state",
                                "S steady, U unsteady, R reversed, empty where not seen",
                                t -> t.state() == '-' ? null : String.valueOf(t.state())));
    }

    /** In the order of the states: sides, then stations outboard, then from front to rear. */
    private static List<SeenTuft> tuftsOf(Survey survey) {
        List<SeenTuft> all = new ArrayList<>();
        String states = survey.is().states();
        TuftGridDocument grid = survey.of();
        if (states == null || grid.wings() == null || states.length() != grid.size()) {
            return all;
        }
        for (boolean left : grid.wings().sides()) {
            for (double station : grid.stationsMm()) {
                for (double chord : grid.chordFractions()) {
                    all.add(new SeenTuft(survey, left, station, chord, states.charAt(all.size())));
                }
            }
        }
        return all;
    }
}
