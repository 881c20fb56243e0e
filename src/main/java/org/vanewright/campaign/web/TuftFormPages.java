package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.TuftGridDocument;
import org.vanewright.campaign.TuftRules;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.tuft.Tuft;
import org.vanewright.engineering.tuft.TuftSurvey;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Draft;
import org.vanewright.record.Revision;
import org.vanewright.record.photograph.PhotographRules;
import org.vanewright.record.photograph.PhotographUse;

/** Fills the pages on which tufts are recorded. */
@Component
class TuftFormPages {
    private static final List<Option> SIDES =
            List.of(new Option("UPPER", "Upper side"), new Option("LOWER", "Lower side"));
    private static final List<Option> WINGS =
            List.of(new Option("BOTH", "Right and left"), new Option("RIGHT", "Right"), new Option("LEFT", "Left"));
    /** What a tuft may be said to do, the mark it is drawn with, and the word beneath. */
    private static final List<Pick> PICKS = List.of(
            new Pick("S", "steady", "steady"),
            new Pick("U", "unsteady", "unsteady"),
            new Pick("R", "reversed", "reversed"),
            new Pick("-", "unseen", "not seen"));

    private final CampaignService campaigns;

    TuftFormPages(CampaignService campaigns) {
        this.campaigns = campaigns;
    }

    /** A choice for a tuft. */
    public record Pick(String value, String kind, String word) {}

    /** A grid in the list with what is recorded. */
    public record GridLine(String id, String words, List<Line> surveys) {}

    /** A survey in the list. */
    public record Line(String id, String words) {}

    /** The tufts of one station in the form, front to rear. */
    public record Station(String title, List<Field> fields) {}

    /** One tuft in the form. */
    public record Field(String path, String chord, String words) {}

    /** A photograph of the campaign that may be shown beside the survey. */
    public record Shown(String path, PhotographUse use, boolean ticked) {}

    ModelAndView grids(Draft<CampaignDocument> draft, Form form, Units units, HttpStatus status, Model model) {
        CampaignDocument campaign = draft.content();
        Optional<Revision<AirframeDocument>> airframe = campaigns.airframe(campaign);
        describe(draft, form, model);
        model.addAttribute("sides", SIDES);
        model.addAttribute("wings", WINGS);
        model.addAttribute("lengthUnit", new Units(form.units()).lengthUnit());
        model.addAttribute("room", campaign.tufts().size() < TuftRules.MAX_GRIDS);
        model.addAttribute("surfaces", airframe.map(TuftFormPages::surfaces).orElse(List.of()));
        model.addAttribute(
                "grids", campaign.tufts().stream().map(g -> line(g, units)).toList());
        model.addAttribute(
                "tufts", TuftsView.of(campaign, airframe.map(Revision::content).orElse(null), units));
        return new ModelAndView("campaign/tufts", status);
    }

    private static List<Option> surfaces(Revision<AirframeDocument> airframe) {
        return airframe.content().surfaces().stream()
                .map(s -> new Option(s.label(), s.label()))
                .toList();
    }

    private static GridLine line(TuftGridDocument grid, Units units) {
        return new GridLine(
                String.valueOf(grid.id()),
                TuftWords.title(grid) + ": " + grid.size() + " tufts, stations " + TuftWords.stations(grid, units),
                grid.surveys().stream()
                        .map(s -> new Line(String.valueOf(s.id()), TuftWords.shortLine(s, units)))
                        .toList());
    }

    ModelAndView survey(
            Draft<CampaignDocument> draft,
            TuftGridDocument grid,
            Form form,
            Units units,
            HttpStatus status,
            Model model) {
        describe(draft, form, model);
        TuftMaps maps = maps(draft.content(), grid, units);
        model.addAttribute("grid", grid);
        model.addAttribute("title", TuftWords.title(grid));
        model.addAttribute("configurations", PointPages.configurations(draft.content()));
        model.addAttribute("picks", PICKS);
        model.addAttribute("map", maps == null ? null : map(maps, grid, form));
        model.addAttribute("stations", maps == null ? List.of() : stations(maps, grid, units));
        model.addAttribute("frames", maps == null ? null : frames(grid, form, maps, units));
        List<String> ticked = TuftForms.shown(form);
        List<PhotographUse> photographs = draft.content().photographs();
        model.addAttribute("shown", shown(photographs, ticked));
        model.addAttribute("roomForPictures", photographs.size() < PhotographRules.MOST);
        return new ModelAndView("campaign/tuft-survey", status);
    }

    private static @Nullable FramesView frames(TuftGridDocument grid, Form form, TuftMaps maps, Units units) {
        return grid.surveys().stream()
                .filter(s -> form.value("id").equals(s.id()))
                .findFirst()
                .flatMap(s -> FramesView.of(s, maps.grid().tufts(), units))
                .orElse(null);
    }

    ModelAndView frames(
            Draft<CampaignDocument> draft,
            TuftGridDocument grid,
            Form form,
            Units units,
            HttpStatus status,
            Model model) {
        describe(draft, form, model);
        TuftMaps maps = maps(draft.content(), grid, units);
        model.addAttribute("grid", grid);
        model.addAttribute("title", TuftWords.title(grid));
        model.addAttribute("configurations", PointPages.configurations(draft.content()));
        model.addAttribute(
                "places",
                maps == null
                        ? List.of()
                        : maps.grid().tufts().stream()
                                .map(t -> TuftWords.place(t, units))
                                .toList());
        return new ModelAndView("campaign/tuft-frames", status);
    }

    /** Null where the grid does not fit the aircraft of the plan, which may have been changed since. */
    private @Nullable TuftMaps maps(CampaignDocument campaign, TuftGridDocument grid, Units units) {
        try {
            return campaigns
                    .airframe(campaign)
                    .map(a -> new TuftMaps(a.content(), grid, units))
                    .orElse(null);
        } catch (InvalidInputException e) {
            return null;
        }
    }

    private static TuftMap map(TuftMaps maps, TuftGridDocument grid, Form form) {
        TuftSurvey survey = new TuftSurvey(maps.grid(), TuftForms.states(form.unchecked(), grid));
        return maps.states("survey", "What the form says", survey, i -> TuftForms.field(grid, i));
    }

    private static List<Station> stations(TuftMaps maps, TuftGridDocument grid, Units units) {
        List<Tuft> tufts = maps.grid().tufts();
        int rows = maps.grid().rows();
        List<Station> stations = new ArrayList<>();
        for (int first = 0; first < tufts.size(); first += rows) {
            Tuft tuft = tufts.get(first);
            stations.add(new Station(
                    (tuft.left() ? "Left, " : "Right, ") + units.span(tuft.stationMm()),
                    IntStream.range(first, first + rows)
                            .mapToObj(i -> new Field(
                                    TuftForms.field(grid, i),
                                    TuftWords.percent(tufts.get(i).chordFraction()),
                                    TuftWords.place(tufts.get(i), units)))
                            .toList()));
        }
        return stations;
    }

    private static List<Shown> shown(List<PhotographUse> photographs, List<String> ticked) {
        return IntStream.range(0, photographs.size())
                .mapToObj(i -> new Shown(
                        "shown[" + i + "]",
                        photographs.get(i),
                        ticked.contains(String.valueOf(photographs.get(i).sha256()))))
                .toList();
    }

    private static void describe(Draft<CampaignDocument> draft, Form form, Model model) {
        model.addAttribute("draft", draft);
        model.addAttribute("campaign", draft.content());
        model.addAttribute("base", "/campaigns/drafts/" + draft.id());
        model.addAttribute("form", form);
    }
}
