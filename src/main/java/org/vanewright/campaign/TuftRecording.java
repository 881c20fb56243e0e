package org.vanewright.campaign;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.Draft;
import org.vanewright.record.photograph.PhotographIntake;
import org.vanewright.record.photograph.PhotographRules;
import org.vanewright.record.photograph.PhotographUse;

/** Adds grids of tufts, and what was seen of them, to the draft of a campaign. */
@Service
public class TuftRecording {
    private final CampaignService campaigns;
    private final Recording recording;
    private final PhotographIntake photographs;

    TuftRecording(CampaignService campaigns, Recording recording, PhotographIntake photographs) {
        this.campaigns = campaigns;
        this.recording = recording;
        this.photographs = photographs;
    }

    /**
     * Adds a grid at the end; one whose id is there already is not added again.
     *
     * @throws InvalidInputException with every problem, fields named as they stand in a grid
     */
    public Draft<CampaignDocument> addGrid(String draftId, TuftGridDocument grid) {
        CampaignDocument before = campaigns.drafts().find(draftId).content();
        Checks checks = new Checks();
        TuftRules.grid(grid).forEach(checks::add);
        if (checks.isClean()) {
            campaigns
                    .airframe(before)
                    .ifPresentOrElse(
                            a -> TuftRules.onAircraft(grid, a.content()).forEach(checks::add),
                            () -> checks.add(
                                    new FieldProblem("surface", "no airframe", "a surface of the plan's airframe")));
        }
        checks.throwIfAny();
        return recording.change(draftId, campaign -> {
            if (campaign.tufts().stream()
                    .anyMatch(g -> String.valueOf(grid.id()).equals(g.id()))) {
                return campaign;
            }
            List<TuftGridDocument> all = new ArrayList<>(campaign.tufts());
            all.add(grid);
            if (all.size() > TuftRules.MAX_GRIDS) {
                throw refused("surface", "one more grid", "at most " + TuftRules.MAX_GRIDS + " grids");
            }
            return campaign.withTufts(all);
        });
    }

    /** Takes a grid out. One with surveys stays until they are taken out. */
    public Draft<CampaignDocument> removeGrid(String draftId, String gridId) {
        campaigns.drafts().find(draftId);
        return recording.change(draftId, campaign -> {
            if (!grid(campaign, gridId).surveys().isEmpty()) {
                throw refused("grid", gridId, "a grid without surveys: remove those first");
            }
            return campaign.withTufts(campaign.tufts().stream()
                    .filter(g -> !gridId.equals(g.id()))
                    .toList());
        });
    }

    /**
     * Adds a survey to a grid, or puts it in the place of the one with its id. Pictures are kept only when the survey
     * itself is in order.
     *
     * @param pictures files to be kept as photographs of the campaign and shown beside the survey
     * @throws InvalidInputException with every problem, fields named as they stand in a survey
     */
    public Draft<CampaignDocument> put(
            String draftId, String gridId, TuftSurveyDocument survey, List<byte[]> pictures) {
        CampaignDocument before = campaigns.drafts().find(draftId).content();
        Checks checks = new Checks();
        TuftRules.survey(survey, grid(before, gridId), before).forEach(checks::add);
        int room = PhotographRules.MOST - before.photographs().size();
        checks.require(
                pictures.size() <= room,
                "photographs",
                pictures.size() + " more",
                "at most " + PhotographRules.MOST + " photographs of a campaign");
        checks.throwIfAny();
        List<String> taken = pictures.stream().map(photographs::take).distinct().toList();
        return recording.change(draftId, campaign -> {
            CampaignDocument shown = campaign.withPhotographs(joined(campaign.photographs(), taken, survey));
            TuftSurveyDocument full =
                    survey.withPhotographs(Stream.concat(survey.photographs().stream(), taken.stream())
                            .distinct()
                            .toList());
            TuftGridDocument changed = placed(grid(shown, gridId), full);
            List<FieldProblem> late = TuftRules.survey(full, changed, shown);
            if (!late.isEmpty()) {
                throw new InvalidInputException(late);
            }
            return replaced(shown, gridId, g -> changed);
        });
    }

    private static List<PhotographUse> joined(
            List<PhotographUse> before, List<String> taken, TuftSurveyDocument survey) {
        String words = "Tufts, configuration " + survey.configuration() + " at " + survey.indicatedAirspeedKt()
                + " kt indicated";
        List<PhotographUse> all = new ArrayList<>(before);
        taken.stream()
                .filter(hash -> before.stream().noneMatch(use -> hash.equals(use.sha256())))
                .forEach(hash -> all.add(new PhotographUse(hash, words, words)));
        return all;
    }

    private static TuftGridDocument placed(TuftGridDocument grid, TuftSurveyDocument survey) {
        String id = String.valueOf(survey.id());
        List<TuftSurveyDocument> all = new ArrayList<>(grid.surveys());
        boolean known = all.stream().anyMatch(s -> id.equals(s.id()));
        if (known) {
            all.replaceAll(s -> id.equals(s.id()) ? survey.withFrames(either(survey.frames(), s.frames())) : s);
        } else if (all.size() < TuftRules.MAX_SURVEYS) {
            all.add(survey);
        } else {
            throw refused("states", "one more survey", "at most " + TuftRules.MAX_SURVEYS + " surveys of one grid");
        }
        return grid.withSurveys(all);
    }

    /** A form brings no frames; what was made of them stays with the survey. */
    private static @Nullable TuftFramesDocument either(
            @Nullable TuftFramesDocument brought, @Nullable TuftFramesDocument kept) {
        return brought == null ? kept : brought;
    }

    /** Takes a survey out of the draft; earlier versions of the draft keep it. */
    public Draft<CampaignDocument> removeSurvey(String draftId, String gridId, String surveyId) {
        campaigns.drafts().find(draftId);
        return recording.change(draftId, campaign -> {
            TuftGridDocument grid = grid(campaign, gridId);
            List<TuftSurveyDocument> left = grid.surveys().stream()
                    .filter(s -> !surveyId.equals(s.id()))
                    .toList();
            if (left.size() == grid.surveys().size()) {
                throw refused("id", surveyId, "the id of a survey of this grid");
            }
            return replaced(campaign, gridId, g -> g.withSurveys(left));
        });
    }

    private static CampaignDocument replaced(
            CampaignDocument campaign, String gridId, UnaryOperator<TuftGridDocument> change) {
        return campaign.withTufts(campaign.tufts().stream()
                .map(g -> gridId.equals(g.id()) ? change.apply(g) : g)
                .toList());
    }

    private static TuftGridDocument grid(CampaignDocument campaign, String gridId) {
        return campaign.tufts().stream()
                .filter(g -> gridId.equals(g.id()))
                .findFirst()
                .orElseThrow(() -> refused("grid", gridId, "the id of a grid of this draft"));
    }

    private static InvalidInputException refused(String field, String value, String allowed) {
        return new InvalidInputException(new FieldProblem(field, value, allowed));
    }
}
