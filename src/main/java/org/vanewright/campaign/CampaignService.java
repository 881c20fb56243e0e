package org.vanewright.campaign;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeService;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.photograph.Photographs;
import org.vanewright.record.RecordDesk;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionHead;
import org.vanewright.record.RevisionRef;

/** Campaigns and their revisions. Each revision pins the airframe and the layouts that were flown. */
@Service
public class CampaignService extends RecordService<CampaignDocument> {
    private final CampaignRepository campaigns;
    private final AirframeService airframes;
    private final LayoutService layouts;
    private final Photographs photographs;

    CampaignService(
            CampaignRepository campaigns,
            AirframeService airframes,
            LayoutService layouts,
            Photographs photographs,
            RecordDesk desk) {
        super("campaign", "campaigns", campaigns, desk);
        this.campaigns = campaigns;
        this.airframes = airframes;
        this.layouts = layouts;
        this.photographs = photographs;
    }

    @Override
    protected List<FieldProblem> problems(CampaignDocument campaign) {
        Checks checks = new Checks();
        CampaignRules.check(campaign).forEach(checks::add);
        if (checks.isClean()) {
            airframe(campaign, checks);
            fitted(campaign, checks);
            calibration(campaign, checks);
            photographs.missing(campaign.photographs()).forEach(checks::add);
        }
        return checks.problems();
    }

    private void airframe(CampaignDocument campaign, Checks checks) {
        Optional<Revision<AirframeDocument>> found = airframe(campaign);
        if (!checks.require(
                found.isPresent(),
                "plan.airframe",
                String.valueOf(campaign.plan().airframe()),
                "a revision that exists")) {
            return;
        }
        AirframeDocument.Masses masses = found.get().content().masses();
        Double maximum = masses == null ? null : masses.maximumKg();
        Double standard = campaign.plan().conditions().standardMassKg();
        checks.require(
                maximum == null || standard == null || standard <= maximum,
                "plan.conditions.standardMassKg",
                standard,
                "at most the aircraft's maximum mass of " + maximum + " kg");
        for (int i = 0; i < campaign.tufts().size(); i++) {
            checks.addUnder(
                    "tufts[" + i + "]",
                    TuftRules.onAircraft(campaign.tufts().get(i), found.get().content()));
        }
    }

    /** The exact revision of its aircraft, if it names one that may be seen. */
    public Optional<Revision<AirframeDocument>> airframe(CampaignDocument campaign) {
        return Optional.ofNullable(campaign.plan().airframe()).flatMap(airframes::find);
    }

    /** Published campaigns with any revision of an airframe, newest first, without what they say. */
    public List<RevisionHead> headsOfAirframe(String airframeSlug, int most) {
        return campaigns.headsOfAirframe(airframeSlug, most);
    }

    /** Published campaigns with any revision of each layout, newest first, without what they say. */
    public Map<String, List<RevisionRef>> refsOfLayouts(Collection<String> layoutSlugs) {
        return campaigns.refsOfLayouts(layoutSlugs);
    }

    /** Published campaigns with any revision of a layout, newest first. */
    public List<Revision<CampaignDocument>> withLayout(String layoutSlug) {
        return campaigns.withLayout(layoutSlug);
    }

    private void fitted(CampaignDocument campaign, Checks checks) {
        List<ConfigurationDocument> all = campaign.plan().configurations();
        RevisionRef aircraft = campaign.plan().airframe();
        for (int i = 1; i < all.size(); i++) {
            RevisionRef ref = all.get(i).layout();
            Optional<Revision<LayoutDocument>> layout = ref == null ? Optional.empty() : layouts.find(ref);
            String field = "plan.configurations[" + i + "].layout";
            if (checks.require(layout.isPresent(), field, String.valueOf(ref), "a revision that exists")
                    && aircraft != null) {
                checks.require(
                        layout.get().content().airframe().slug().equals(aircraft.slug()),
                        field,
                        String.valueOf(ref),
                        "a layout for the same airframe");
            }
        }
    }

    private void calibration(CampaignDocument campaign, Checks checks) {
        RevisionRef ref = campaign.plan().calibration().campaign();
        if (ref == null) {
            return;
        }
        Optional<Revision<CampaignDocument>> other = find(ref);
        String field = "plan.calibration.campaign";
        if (checks.require(other.isPresent(), field, String.valueOf(ref), "a revision that exists")) {
            RevisionRef theirs = other.get().content().plan().airframe();
            RevisionRef own = campaign.plan().airframe();
            checks.require(
                    theirs != null && own != null && theirs.slug().equals(own.slug()),
                    field,
                    String.valueOf(ref),
                    "a campaign with the same airframe");
        }
    }

    @Override
    protected List<FieldProblem> referenceProblems(CampaignDocument campaign) {
        Checks checks = new Checks();
        requirePublic("plan.airframe", airframe(campaign), checks);
        List<ConfigurationDocument> all = campaign.plan().configurations();
        for (int i = 1; i < all.size(); i++) {
            RevisionRef ref = all.get(i).layout();
            requirePublic(
                    "plan.configurations[" + i + "].layout",
                    Optional.ofNullable(ref).flatMap(layouts::find),
                    checks);
        }
        RevisionRef calibration = campaign.plan().calibration().campaign();
        if (calibration != null) {
            requirePublic("plan.calibration.campaign", find(calibration), checks);
        }
        return checks.problems();
    }

    private static void requirePublic(String field, Optional<? extends Revision<?>> found, Checks checks) {
        boolean ok = found.isPresent() && found.get().isPublic();
        checks.require(ok, field, found.map(r -> r.ref().toString()).orElse(null), "a published revision");
    }
}
