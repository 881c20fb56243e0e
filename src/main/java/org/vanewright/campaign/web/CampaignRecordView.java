package org.vanewright.campaign.web;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.PointDocument;
import org.vanewright.campaign.TuftGridDocument;
import org.vanewright.platform.editing.Picture;
import org.vanewright.platform.editing.RecordView;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;

/** A campaign on pages that show every kind of record. */
@Component
class CampaignRecordView implements RecordView<CampaignDocument> {
    @Override
    public String kind() {
        return "campaign";
    }

    @Override
    public String label() {
        return "Campaign";
    }

    /** The plan as its editor shows it, and each test point on a line. */
    @Override
    public Form fields(CampaignDocument campaign, UnitSystem units) {
        Form form = CampaignForms.of(campaign, units);
        for (int i = 0; i < campaign.points().size(); i++) {
            PointDocument point = campaign.points().get(i);
            form.put("points[" + i + "]", PointWords.line(point));
        }
        for (int i = 0; i < campaign.handling().size(); i++) {
            form.put("handling[" + i + "]", PointWords.line(campaign.handling().get(i)));
        }
        for (int i = 0; i < campaign.tufts().size(); i++) {
            TuftGridDocument grid = campaign.tufts().get(i);
            form.put("tufts[" + i + "]", TuftWords.line(grid));
            for (int j = 0; j < grid.surveys().size(); j++) {
                String at = "tufts[" + i + "].surveys[" + j + "]";
                form.put(at, TuftWords.line(grid.surveys().get(j)));
            }
        }
        return form;
    }

    @Override
    public List<Picture> pictures(CampaignDocument campaign, Units units, String idPrefix) {
        return List.of();
    }
}
