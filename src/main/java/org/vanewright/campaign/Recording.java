package org.vanewright.campaign;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.Draft;
import org.vanewright.record.DraftConflictException;

/**
 * Adds what was flown to the draft of a campaign. What two people record at the same time both stays, since each change
 * is made anew on what is saved by then.
 */
@Service
public class Recording {
    private static final int TRIES = 8;

    private final CampaignService campaigns;

    Recording(CampaignService campaigns) {
        this.campaigns = campaigns;
    }

    /**
     * Adds test points at the end. One whose id is there already is not added again, so that what was sent twice over a
     * bad connection counts once.
     *
     * @throws InvalidInputException with every problem; fields of the second point begin with {@code points[1].}, those of
     *     a single one with its own names
     */
    public Draft<CampaignDocument> add(String draftId, List<PointDocument> points) {
        PlanDocument plan = campaigns.drafts().find(draftId).content().plan();
        Checks checks = new Checks();
        for (int i = 0; i < points.size(); i++) {
            List<FieldProblem> found = PointRules.check(points.get(i), plan);
            if (points.size() == 1) {
                found.forEach(checks::add);
            } else {
                checks.addUnder("points[" + i + "]", found);
            }
        }
        checks.throwIfAny();
        return change(draftId, campaign -> campaign.withPoints(joined(campaign.points(), points)));
    }

    private static List<PointDocument> joined(List<PointDocument> before, List<PointDocument> added) {
        Set<String> known = new HashSet<>();
        before.forEach(p -> known.add(String.valueOf(p.id())));
        List<PointDocument> all = new ArrayList<>(before);
        added.stream().filter(p -> known.add(String.valueOf(p.id()))).forEach(all::add);
        if (all.size() > CampaignRules.MAX_POINTS) {
            throw new InvalidInputException(new FieldProblem(
                    "points", String.valueOf(all.size()), "at most " + CampaignRules.MAX_POINTS + " test points"));
        }
        return all;
    }

    /** Puts a test point in the place of the one with its id. */
    public Draft<CampaignDocument> replace(String draftId, PointDocument point) {
        PlanDocument plan = campaigns.drafts().find(draftId).content().plan();
        Checks checks = new Checks();
        PointRules.check(point, plan).forEach(checks::add);
        checks.throwIfAny();
        return change(draftId, campaign -> {
            require(campaign, String.valueOf(point.id()));
            return campaign.withPoints(campaign.points().stream()
                    .map(p -> String.valueOf(point.id()).equals(p.id()) ? point : p)
                    .toList());
        });
    }

    /** Takes a test point out of the draft; earlier versions of the draft keep it. */
    public Draft<CampaignDocument> remove(String draftId, String pointId) {
        return change(draftId, campaign -> {
            require(campaign, pointId);
            return campaign.withPoints(campaign.points().stream()
                    .filter(p -> !pointId.equals(p.id()))
                    .toList());
        });
    }

    private static void require(CampaignDocument campaign, String pointId) {
        if (campaign.points().stream().noneMatch(p -> pointId.equals(p.id()))) {
            throw new InvalidInputException(new FieldProblem("id", pointId, "the id of a test point of this draft"));
        }
    }

    /** Adds a rating. */
    public Draft<CampaignDocument> rate(String draftId, HandlingDocument rating) {
        return change(draftId, campaign -> {
            List<HandlingDocument> all = new ArrayList<>(campaign.handling());
            all.add(rating);
            CampaignDocument changed = campaign.withHandling(all);
            requireNoNew("handling", campaign, changed);
            return changed;
        });
    }

    /** Takes a rating out. */
    public Draft<CampaignDocument> unrate(String draftId, int index) {
        return change(draftId, campaign -> {
            List<HandlingDocument> all = new ArrayList<>(campaign.handling());
            if (index < 0 || index >= all.size()) {
                throw new InvalidInputException(
                        new FieldProblem("handling", String.valueOf(index), "the number of a rating, counted from 0"));
            }
            all.remove(index);
            return campaign.withHandling(all);
        });
    }

    private static void requireNoNew(String list, CampaignDocument before, CampaignDocument after) {
        String last = list + "[" + before.handling().size() + "]";
        List<FieldProblem> found = CampaignRules.check(after).stream()
                .filter(p -> p.field().equals(list) || p.field().startsWith(last))
                .map(p -> new FieldProblem(p.field().replace(last + ".", ""), p.value(), p.allowed()))
                .toList();
        if (!found.isEmpty()) {
            throw new InvalidInputException(found);
        }
    }

    /** Changes what is saved, again where somebody else has saved in between. */
    Draft<CampaignDocument> change(String draftId, UnaryOperator<CampaignDocument> change) {
        for (int tried = 1; ; tried++) {
            Draft<CampaignDocument> draft = campaigns.drafts().find(draftId);
            CampaignDocument changed = change.apply(draft.content());
            if (changed.equals(draft.content())) {
                return draft;
            }
            try {
                return campaigns.drafts().save(draftId, draft.version(), changed, null);
            } catch (DraftConflictException e) {
                if (tried == TRIES) {
                    throw e;
                }
            }
        }
    }

    /** An id for a test point that brings none. */
    public static String newId() {
        return UUID.randomUUID().toString();
    }
}
