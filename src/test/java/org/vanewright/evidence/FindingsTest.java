package org.vanewright.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.vanewright.airframe.OperatingBasis;
import org.vanewright.campaign.Measure;
import org.vanewright.record.RevisionRef;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;

class FindingsTest extends ServerTest {
    private Findings findings() {
        return context().getBean(Findings.class);
    }

    private JsonNode demo() {
        return json(get("/api/v1/campaigns/" + FlownCampaigns.DEMO + "/revisions/1"), 200)
                .get("content");
    }

    @Test
    void aFindingSaysWhatTheCampaignsOwnPageSays() {
        List<Finding> found = findings().ofCampaign(new RevisionRef(FlownCampaigns.DEMO, 1));
        assertThat(found).hasSize(1);
        Finding finding = found.get(0);
        assertThat(finding.quantity()).isEqualTo(Measure.STALL_SPEED);
        assertThat(finding.layout()).isEqualTo(new RevisionRef(FlownCampaigns.LAYOUT, 1));
        assertThat(finding.reference()).isEqualTo(FlownCampaigns.DEMO + "@1.B");
        assertThat(finding.invented()).isTrue();
        assertThat(finding.operatingBasis()).isIn((Object[]) OperatingBasis.values());
        assertThat(finding.interval().contains(finding.change())).isTrue();
        JsonNode row = json(get("/api/v1/layouts/" + FlownCampaigns.LAYOUT + "/revisions/1"), 200)
                .get("content")
                .get("rows")
                .get(0);
        assertThat(finding.chordFraction()).isCloseTo(row.get("chordFraction").asDouble(), within(0.02));
        assertThat(finding.heightOverThickness()).isBetween(0.05, 20.0);
        String[] csv = get("/compare.csv?of=" + finding.reference()).body().split("\r\n");
        double change =
                Double.parseDouble(csv[1].split(",")[List.of(csv[0].split(",")).indexOf("change")]);
        assertThat(finding.change()).isCloseTo(change, within(1e-4));
    }

    @Test
    void theHeightIsMeasuredAgainstTheLayerThatTheStudyShows() {
        Finding finding =
                findings().ofCampaign(new RevisionRef(FlownCampaigns.DEMO, 1)).get(0);
        JsonNode study = json(get("/api/v1/layouts/" + FlownCampaigns.LAYOUT + "/study"), 200);
        List<Double> ratios = study.findValuesAsString("heightToThickness").stream()
                .map(Double::valueOf)
                .toList();
        assertThat(ratios).isNotEmpty();
        double own = Objects.requireNonNull(finding.heightOverThickness());
        assertThat(ratios).anySatisfy(ratio -> assertThat(own).isCloseTo(ratio, within(1e-6 + 1e-3 * ratio)));
    }

    @Test
    void whatIsPublishedIsFoundByItsLayoutAndAmongAll() {
        RevisionRef layout = new RevisionRef(FlownCampaigns.LAYOUT, 1);
        String path = shipped("campaigns", FlownCampaigns.like(demo(), "Found by its layout", "up", -1));
        String slug = path.replace("/campaigns/", "");
        assertThat(findings().ofLayout(layout))
                .anySatisfy(f -> assertThat(f.campaign().slug()).isEqualTo(slug));
        assertThat(findings().ofLayout(new RevisionRef(FlownCampaigns.LAYOUT, 9)))
                .isEmpty();
        assertThat(findings().ofLayout("nothing-of-the-kind")).isEmpty();
        Finding alone = findings().ofCampaign(new RevisionRef(slug, 1)).get(0);
        Finding demo =
                findings().ofCampaign(new RevisionRef(FlownCampaigns.DEMO, 1)).get(0);
        assertThat(alone.change()).as("a knot lower").isLessThan(demo.change() - 0.5);
        assertThat(alone.intervalExcludesZero()).isTrue();
    }

    @Test
    void whatWasWithdrawnCountsNoMore() {
        String path = shipped("campaigns", FlownCampaigns.like(demo(), "To be withdrawn", "up", -1));
        RevisionRef ref = new RevisionRef(path.replace("/campaigns/", ""), 1);
        publishing().withdraw("campaigns", ref, "The wrong mass was noted.");
        assertThat(findings().all().findings())
                .noneSatisfy(f -> assertThat(f.campaign()).isEqualTo(ref));
    }
}
