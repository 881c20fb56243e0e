package org.vanewright.campaign.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.PointTable;
import org.vanewright.campaign.Recording;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.record.Draft;
import org.vanewright.record.web.RecordPaths;

/** Test points from a table: read first, taken over only when the person accepts what could be read. */
@Controller
class ImportPages {
    private static final String IMPORT = "/campaigns/" + RecordPaths.DRAFT + "/import";

    private final CampaignService campaigns;
    private final Recording recording;

    ImportPages(CampaignService campaigns, Recording recording) {
        this.campaigns = campaigns;
        this.recording = recording;
    }

    @GetMapping(IMPORT)
    String ask(@PathVariable("id") String id, Model model) {
        describe(campaigns.drafts().find(id), "", model);
        return "campaign/import";
    }

    /** @param action {@code read} shows what would be taken over, {@code accept} takes it over */
    @PostMapping(IMPORT)
    ModelAndView take(
            @PathVariable("id") String id,
            @RequestParam(name = "action", defaultValue = "read") String action,
            @RequestParam(name = "table", defaultValue = "") String table,
            @RequestParam(name = "file", required = false) @Nullable MultipartFile file,
            Model model) {
        campaigns.drafts().requireAuthor();
        Draft<CampaignDocument> draft = campaigns.drafts().find(id);
        String text = file == null || file.isEmpty() ? table : text(file);
        describe(draft, text, model);
        try {
            PointTable read = PointTable.read(text, draft.content().plan());
            if (action.equals("accept") && !read.points().isEmpty()) {
                recording.add(id, read.points());
                return SeeOther.to("/campaigns/drafts/" + id + "/points");
            }
            model.addAttribute("read", read);
            model.addAttribute(
                    "words", read.points().stream().map(PointWords::line).toList());
            return new ModelAndView("campaign/import", HttpStatus.OK);
        } catch (InvalidInputException e) {
            model.addAttribute("problems", e.problems());
            return new ModelAndView("campaign/import", HttpStatus.UNPROCESSABLE_CONTENT);
        }
    }

    private static String text(MultipartFile file) {
        if (file.getSize() > PointTable.MAX_BYTES) {
            throw new InvalidInputException(new FieldProblem(
                    "file", file.getSize() + " bytes", "a file of at most " + PointTable.MAX_BYTES + " bytes"));
        }
        try {
            return new String(file.getBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void describe(Draft<CampaignDocument> draft, String table, Model model) {
        model.addAttribute("draft", draft);
        model.addAttribute("campaign", draft.content());
        model.addAttribute("base", "/campaigns/drafts/" + draft.id());
        model.addAttribute("table", table.length() > PointTable.MAX_BYTES ? "" : table);
        model.addAttribute("columns", PointTable.COLUMNS);
        model.addAttribute("problems", List.of());
    }

    /** A table to start from; every row of it is invented. */
    @GetMapping(path = "/campaigns/example.csv", produces = "text/csv")
    ResponseEntity<String> example() {
        return ResponseEntity.ok()
                .contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
                .header("Content-Disposition", "attachment; filename=\"test-points-example.csv\"")
                .body(EXAMPLE);
    }

    private static final String EXAMPLE = """
            kind,configuration,sortie,indicated_airspeed_kt,pressure_altitude_ft,outside_air_temperature_c,block,at,start_mass_kg,fuel_used_kg,load_factor,entry_rate_kt_per_s,warning_airspeed_kt,wing_drop_deg,run,ground_speed_kt,track_deg,remark
            STALL,A,1,46.5,4050,8,1,2026-05-02T09:14:00Z,560,2.4,1.0,0.9,51,5,,,,invented
            STALL,B,2,44.5,4100,8,1,2026-05-02T10:31:00Z,560,2.1,1.0,1.0,49,4,,,,invented
            AIRSPEED,A,1,70,4000,8,,,,,,,,,run 1,83.1,12,invented
            AIRSPEED,A,1,70,4000,8,,,,,,,,,run 1,61.4,131,invented
            AIRSPEED,A,1,70,4000,8,,,,,,,,,run 1,68.9,252,invented
            """;
}
