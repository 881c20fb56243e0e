package org.vanewright.campaign.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.PointDocument;
import org.vanewright.campaign.Recording;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordApi;

/** Campaigns and their test points as JSON. */
@RestController
@RequestMapping("/api/v1/campaigns")
@Tag(name = "Campaigns", description = "Flights made to compare configurations of one airframe.")
class CampaignApi extends RecordApi<CampaignDocument> {
    private final CampaignService campaigns;
    private final Recording recording;

    CampaignApi(CampaignService campaigns, Recording recording) {
        super(campaigns);
        this.campaigns = campaigns;
        this.recording = recording;
    }

    @Operation(summary = "The test points of the published revision, as they were read")
    @GetMapping("/{slug}/points")
    List<PointDocument> points(@PathVariable("slug") String slug) {
        return campaigns.published(slug).content().points();
    }

    @Operation(summary = "The test points of one exact revision")
    @GetMapping("/{slug}/revisions/{number}/points")
    List<PointDocument> points(@PathVariable("slug") String slug, @PathVariable("number") int number) {
        return campaigns.exactly(new RevisionRef(slug, number)).content().points();
    }

    @Operation(summary = "The test points of a draft of yours")
    @GetMapping("/drafts/{id}/points")
    List<PointDocument> drafted(@PathVariable("id") String id) {
        return campaigns.drafts().find(id).content().points();
    }

    @Operation(summary = "Add a test point to a draft of yours; one whose id is there already is not added again")
    @PostMapping("/drafts/{id}/points")
    ResponseEntity<List<PointDocument>> add(@PathVariable("id") String id, @RequestBody PointDocument point) {
        campaigns.drafts().requireAuthor();
        List<PointDocument> all = recording.add(id, List.of(point)).content().points();
        return ResponseEntity.status(HttpStatus.CREATED).body(all);
    }

    @Operation(summary = "Take a test point out of a draft of yours")
    @DeleteMapping("/drafts/{id}/points/{point}")
    ResponseEntity<Void> remove(@PathVariable("id") String id, @PathVariable("point") String point) {
        campaigns.drafts().requireAuthor();
        recording.remove(id, point);
        return ResponseEntity.noContent().build();
    }
}
