package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.vanewright.airframe.AirframeService;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.PointKind;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.RevisionField;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Fills the page of the form: what it offers, and what follows from what was typed. */
@Component
class CampaignFormPages {
    /** More than this many published records ask for a search, which is not a select's business. */
    private static final int OFFERED = 200;

    private final CampaignService campaigns;
    private final AirframeService airframes;
    private final LayoutService layouts;

    CampaignFormPages(CampaignService campaigns, AirframeService airframes, LayoutService layouts) {
        this.campaigns = campaigns;
        this.airframes = airframes;
        this.layouts = layouts;
    }

    /** A form to start from, for the layout or the airframe asked for, or the newest airframe. */
    Form blank(Units units, @Nullable String airframeSlug, @Nullable String layoutSlug) {
        Optional<Revision<LayoutDocument>> layout =
                Optional.ofNullable(layoutSlug).flatMap(layouts::latest);
        Optional<RevisionRef> airframe = layout.map(l -> l.content().airframe())
                .or(() -> Optional.ofNullable(airframeSlug)
                        .flatMap(airframes::latest)
                        .map(Revision::ref))
                .or(() -> airframes.list(null, 1).items().stream().findFirst().map(Revision::ref));
        Form form = CampaignForms.blank(
                units.system(), airframe.map(RevisionField::value).orElse(""));
        layout.ifPresent(l -> form.put(CampaignForms.CONFIGURATIONS + "[1].layout", RevisionField.value(l.ref()))
                .put(CampaignForms.CONFIGURATIONS + "[1].name", l.content().name()));
        return form;
    }

    CampaignChoices choices(Form form) {
        List<RevisionRef> fitted = IntStream.range(0, form.size(CampaignForms.CONFIGURATIONS))
                .mapToObj(i -> RevisionField.quiet(form, CampaignForms.CONFIGURATIONS + "[" + i + "].layout"))
                .flatMap(Stream::ofNullable)
                .toList();
        RevisionRef airframe = RevisionField.quiet(form, "plan.airframe");
        return new CampaignChoices(
                RevisionField.options(
                        airframes.list(null, OFFERED).items(),
                        Stream.ofNullable(airframe).toList()),
                RevisionField.options(of(airframe), fitted),
                RevisionField.options(
                        calibrated(airframe),
                        Stream.ofNullable(RevisionField.quiet(form, "plan.calibration.campaign"))
                                .toList()));
    }

    private List<Revision<LayoutDocument>> of(@Nullable RevisionRef airframe) {
        return layouts.list(null, OFFERED).items().stream()
                .filter(l -> airframe == null || l.content().airframe().slug().equals(airframe.slug()))
                .toList();
    }

    /** Campaigns with the same aircraft that calibrated its airspeeds. */
    private List<Revision<CampaignDocument>> calibrated(@Nullable RevisionRef airframe) {
        List<Revision<CampaignDocument>> found = new ArrayList<>();
        for (Revision<CampaignDocument> each : campaigns.list(null, OFFERED).items()) {
            RevisionRef theirs = each.content().plan().airframe();
            boolean same = airframe != null && theirs != null && theirs.slug().equals(airframe.slug());
            if (same && !each.content().points(PointKind.AIRSPEED).isEmpty()) {
                found.add(each);
            }
        }
        return found;
    }

    /** What follows from the plan: how many repeats, and in which order. */
    void draw(CampaignDocument typed, Model model) {
        model.addAttribute("planView", PlanView.of(typed.plan(), "preview-"));
    }
}
