package org.vanewright.campaign.web;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeService;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.Schedule;
import org.vanewright.kit.KitFile;
import org.vanewright.kit.KitFiles;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.RevisionField;
import org.vanewright.platform.page.Cautions;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.record.RecordState;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.Standing;

/**
 * What test cards of a layout can be: those of the plan that the form of a new campaign begins with, its blanks to be
 * filled in. They are of no campaign, and say so.
 */
@Component
class FirstCardKitFiles implements KitFiles<LayoutDocument> {
    private static final String NO_HASH = "0".repeat(64);

    private final AirframeService airframes;
    private final Cautions cautions;

    FirstCardKitFiles(AirframeService airframes, Cautions cautions) {
        this.airframes = airframes;
        this.cautions = cautions;
    }

    @Override
    public String kind() {
        return "layout";
    }

    @Override
    public List<KitFile> of(Revision<LayoutDocument> layout) {
        return List.of(new KitFile(
                "test-cards-to-begin-with.pdf",
                "application/pdf",
                "Test cards of the plan that a new campaign begins with; of no campaign",
                () -> cards(layout)));
    }

    private byte[] cards(Revision<LayoutDocument> layout) {
        RevisionRef airframe = layout.content().airframe();
        Form form = CampaignForms.blank(UnitSystem.METRIC, RevisionField.value(airframe));
        form.put("name", (Object) ("To begin with: " + layout.content().name()));
        String second = CampaignForms.CONFIGURATIONS + "[1]";
        form.put(second + ".name", layout.content().name()).put(second + ".layout", RevisionField.value(layout.ref()));
        CampaignDocument plan = CampaignForms.read(form, null);
        Revision<CampaignDocument> none = new Revision<>(
                "of-no-campaign",
                1,
                RecordState.DRAFT,
                plan,
                NO_HASH,
                layout.contributor(),
                layout.createdAt(),
                null,
                new Standing(null, null, null, null, null, null, null, null, null));
        List<Schedule.Sortie> sorties = TestCards.sorties(plan.plan());
        AirframeDocument aircraft =
                airframes.find(airframe).map(Revision::content).orElse(null);
        return TestCardSheet.pdf(
                none,
                aircraft,
                sorties,
                sorties.size(),
                cautions.all(layout.content().invented()));
    }
}
