package org.vanewright.campaign.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.PointDocument;
import org.vanewright.campaign.PointKind;
import org.vanewright.campaign.PointRules;
import org.vanewright.campaign.PointSource;
import org.vanewright.campaign.log.FlightLog;
import org.vanewright.campaign.log.FlightLogs;
import org.vanewright.campaign.log.LogEvent;
import org.vanewright.engineering.flightlog.EventKind;
import org.vanewright.engineering.flightlog.FoundEvent;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Draft;
import org.vanewright.record.web.RecordPaths;

/** Accepting, moving and dropping what was found in a log. Nothing becomes a test point that was not seen as one. */
@Controller
@RequestMapping("/campaigns/" + RecordPaths.DRAFT + "/logs" + LogPages.LOG)
class LogEventPages {
    private final CampaignService campaigns;
    private final FlightLogs logs;

    LogEventPages(CampaignService campaigns, FlightLogs logs) {
        this.campaigns = campaigns;
        this.logs = logs;
    }

    /** @param action {@code drop} leaves the chosen ones out; anything else shows the test point they would be */
    @PostMapping("/events")
    ModelAndView choose(
            @PathVariable("id") String id,
            @PathVariable("log") String logId,
            @RequestParam(name = "event", required = false) @Nullable List<Integer> numbers,
            @RequestParam(name = "action", defaultValue = "point") String action) {
        logs.requireOpen(id);
        String log = LogPages.path(id) + "/logs/" + logs.find(id, logId).id();
        if (numbers == null || numbers.isEmpty()) {
            return SeeOther.to(log);
        }
        if (action.equals("drop")) {
            logs.drop(id, logId, numbers);
            return SeeOther.to(log);
        }
        return SeeOther.to(log + "/point?"
                + numbers.stream()
                        .limit(PointRules.MAX_LEGS)
                        .map(n -> "event=" + n)
                        .collect(Collectors.joining("&")));
    }

    @GetMapping("/point")
    ModelAndView show(
            @PathVariable("id") String id,
            @PathVariable("log") String logId,
            @RequestParam("event") List<Integer> numbers,
            @RequestAttribute("units") Units units,
            Model model) {
        Draft<CampaignDocument> draft = campaigns.drafts().find(id);
        FlightLog log = logs.find(id, logId);
        List<LogEvent> events = together(id, logId, numbers);
        PointKind kind = LogForms.kind(events.get(0).found().kind());
        List<String> keys = draft.content().plan().keys();
        Form begin = PointForms.next(
                units.system(), kind, LogForms.last(draft.content().points(kind)), keys.isEmpty() ? "" : keys.get(0));
        return form(draft, log, events, LogForms.point(begin, log, events), HttpStatus.OK, model);
    }

    /** One event, or legs of one calibration. */
    private List<LogEvent> together(String id, String logId, List<Integer> numbers) {
        List<LogEvent> events = logs.chosen(id, logId, numbers);
        boolean legs = events.stream().allMatch(e -> e.found().kind() == EventKind.LEG);
        if (events.isEmpty() || events.size() > 1 && !legs || events.size() > PointRules.MAX_LEGS) {
            throw new InvalidInputException(
                    new FieldProblem("event", numbers.toString(), "one event, or up to 12 GPS legs"));
        }
        return events;
    }

    @PostMapping("/point")
    ModelAndView accept(
            @PathVariable("id") String id,
            @PathVariable("log") String logId,
            @RequestParam("event") List<Integer> numbers,
            HttpServletRequest request,
            Model model) {
        Draft<CampaignDocument> draft = logs.requireOpen(id);
        FlightLog log = logs.find(id, logId);
        List<LogEvent> events = together(id, logId, numbers);
        Form form = Form.posted(request.getParameterMap());
        form.put("kind", LogForms.kind(events.get(0).found().kind()));
        FoundEvent found = events.get(0).found();
        LogForms.Times times = LogForms.times(form, found);
        if (events.size() == 1 && !form.hasProblems() && asksAnew(form, found, times)) {
            return measuredAnew(draft, log, events, form, times, model);
        }
        PointDocument point = PointForms.read(form, PointSource.LOGGED);
        if (!form.hasProblems()) {
            try {
                FoundEvent moved = events.size() == 1 && times.differ(found.startS(), found.endS())
                        ? logs.measure(id, logId, found, times.startS(), times.endS())
                        : found;
                logs.accept(id, logId, numbers, point, moved);
                return SeeOther.to(LogPages.path(id) + "/logs/" + logId);
            } catch (InvalidInputException e) {
                form.refuse(e.problems());
            }
        }
        return form(draft, log, events, form, HttpStatus.UNPROCESSABLE_CONTENT, model);
    }

    /** What stands in the form was measured between other times, or is to be measured again. */
    private static boolean asksAnew(Form form, FoundEvent found, LogForms.Times times) {
        LogForms.Times measured = LogForms.measuredTimes(form, found);
        return form.is("action", "measure") || times.differ(measured.startS(), measured.endS());
    }

    /** Shows what is measured between the times given now; it counts only once it was seen. */
    private ModelAndView measuredAnew(
            Draft<CampaignDocument> draft,
            FlightLog log,
            List<LogEvent> events,
            Form form,
            LogForms.Times times,
            Model model) {
        try {
            FoundEvent found = events.get(0).found();
            FoundEvent anew = logs.measure(draft.id(), log.id(), found, times.startS(), times.endS());
            LogForms.measured(form, log, List.of(anew));
            model.addAttribute("anew", LogView.describe(anew));
            return form(draft, log, events, form, HttpStatus.OK, model);
        } catch (InvalidInputException e) {
            form.refuse(e.problems());
            return form(draft, log, events, form, HttpStatus.UNPROCESSABLE_CONTENT, model);
        }
    }

    private static ModelAndView form(
            Draft<CampaignDocument> draft,
            FlightLog log,
            List<LogEvent> events,
            Form form,
            HttpStatus status,
            Model model) {
        LogPages.describe(draft, model);
        model.addAttribute("log", log);
        model.addAttribute("events", events.stream().map(LogView.Line::of).toList());
        model.addAttribute("form", form);
        model.addAttribute("isNew", false);
        model.addAttribute("configurations", PointPages.configurations(draft.content()));
        model.addAttribute("massUnit", new Units(form.units()).massUnit());
        return new ModelAndView("campaign/log-point", status);
    }
}
