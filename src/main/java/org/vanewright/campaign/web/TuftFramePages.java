package org.vanewright.campaign.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.multipart.MultipartHttpServletRequest;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.TuftFrameRecording;
import org.vanewright.campaign.TuftGridDocument;
import org.vanewright.campaign.TuftSurveyDocument;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.tuft.TuftMark;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Draft;
import org.vanewright.record.web.RecordPaths;

/** Sending still frames of tufts; what they propose is gone through in the form of a survey. */
@Controller
@RequestMapping("/campaigns/" + RecordPaths.DRAFT + "/tufts" + TuftPages.GRID + "/frames")
class TuftFramePages {
    private final CampaignService campaigns;
    private final TuftFrameRecording recording;
    private final TuftFormPages pages;

    TuftFramePages(CampaignService campaigns, TuftFrameRecording recording, TuftFormPages pages) {
        this.campaigns = campaigns;
        this.recording = recording;
        this.pages = pages;
    }

    @GetMapping
    ModelAndView blank(
            @PathVariable("id") String id,
            @PathVariable("grid") String gridId,
            @RequestAttribute("units") Units units,
            Model model) {
        Draft<CampaignDocument> draft = campaigns.drafts().find(id);
        TuftGridDocument grid = TuftPages.found(draft, gridId);
        Form form = TuftPages.next(draft, grid, units);
        FrameForms.startMarks(form, grid);
        return pages.frames(draft, grid, form, units, HttpStatus.OK, model);
    }

    @PostMapping
    ModelAndView send(
            @PathVariable("id") String id,
            @PathVariable("grid") String gridId,
            @RequestAttribute("units") Units units,
            HttpServletRequest request,
            Model model)
            throws IOException {
        campaigns.drafts().requireAuthor();
        Draft<CampaignDocument> draft = campaigns.drafts().open(id);
        TuftGridDocument grid = TuftPages.found(draft, gridId);
        Form form = Form.posted(request.getParameterMap());
        TuftSurveyDocument condition = FrameForms.readCondition(form);
        SortedMap<Integer, TuftMark> marks = FrameForms.readMarks(form, grid);
        if (!form.hasProblems()) {
            try {
                recording.propose(id, grid, condition, marks, files(request));
                return SeeOther.to("/campaigns/drafts/" + id + "/tufts/" + gridId + "/surveys/" + condition.id());
            } catch (InvalidInputException e) {
                form.refuse(e.problems());
            }
        }
        return pages.frames(draft, grid, form, units, HttpStatus.UNPROCESSABLE_CONTENT, model);
    }

    private static List<TuftFrameRecording.FrameFile> files(HttpServletRequest request) {
        List<TuftFrameRecording.FrameFile> files = new ArrayList<>();
        if (request instanceof MultipartHttpServletRequest multipart) {
            for (MultipartFile file : multipart.getFiles("frames")) {
                if (!file.isEmpty()) {
                    files.add(new Sent(file));
                }
            }
        }
        return files;
    }

    /** Waits on disk until it is looked at. */
    private record Sent(MultipartFile file) implements TuftFrameRecording.FrameFile {
        @Override
        public long size() {
            return file.getSize();
        }

        @Override
        public byte[] bytes() throws IOException {
            return file.getBytes();
        }
    }
}
