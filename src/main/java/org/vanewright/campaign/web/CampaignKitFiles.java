package org.vanewright.campaign.web;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.Schedule;
import org.vanewright.campaign.reduction.Reductions;
import org.vanewright.campaign.reduction.ResultsCsv;
import org.vanewright.kit.KitFile;
import org.vanewright.kit.KitFiles;
import org.vanewright.platform.page.Cautions;
import org.vanewright.record.Revision;

/** What a campaign gives to the kit of a layout that it flies: its test cards, and its results where it has any. */
@Component
class CampaignKitFiles implements KitFiles<CampaignDocument> {
    private final CampaignService campaigns;
    private final Reductions reductions;
    private final Cautions cautions;

    CampaignKitFiles(CampaignService campaigns, Reductions reductions, Cautions cautions) {
        this.campaigns = campaigns;
        this.reductions = reductions;
        this.cautions = cautions;
    }

    @Override
    public String kind() {
        return "campaign";
    }

    @Override
    public List<KitFile> of(Revision<CampaignDocument> campaign) {
        CampaignDocument document = campaign.content();
        List<KitFile> files = new ArrayList<>();
        List<Schedule.Sortie> sorties = TestCards.sorties(document.plan());
        if (!sorties.isEmpty()) {
            files.add(new KitFile(
                    "test-cards.pdf",
                    "application/pdf",
                    "Test cards of this campaign",
                    () -> cards(campaign, sorties)));
        }
        if (!document.points().isEmpty()) {
            files.add(new KitFile(
                    "results.csv",
                    "text/csv",
                    "Results: every test point as read and reduced",
                    () -> ResultsCsv.write(document, reductions.of(document).orElse(null))
                            .getBytes(StandardCharsets.UTF_8)));
        }
        return files;
    }

    private byte[] cards(Revision<CampaignDocument> campaign, List<Schedule.Sortie> sorties) {
        CampaignDocument document = campaign.content();
        AirframeDocument airframe =
                campaigns.airframe(document).map(Revision::content).orElse(null);
        return TestCardSheet.pdf(campaign, airframe, sorties, sorties.size(), cautions.all(document.invented()));
    }
}
