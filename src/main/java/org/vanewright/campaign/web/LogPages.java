package org.vanewright.campaign.web;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.stream.IntStream;
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
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.log.FlightLog;
import org.vanewright.campaign.log.FlightLogs;
import org.vanewright.campaign.log.LogEvent;
import org.vanewright.campaign.log.LogState;
import org.vanewright.engineering.flightlog.ColumnGuess;
import org.vanewright.engineering.flightlog.LogColumn;
import org.vanewright.engineering.flightlog.LogMapping;
import org.vanewright.engineering.flightlog.LogQuantity;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Draft;
import org.vanewright.record.web.RecordPaths;

/** Logs of a draft: sending one, saying what its columns are, and seeing what was found in it. */
@Controller
@RequestMapping("/campaigns/" + RecordPaths.DRAFT + "/logs")
class LogPages {
    static final String LOG = "/{log:[0-9a-f-]{36}}";

    private final CampaignService campaigns;
    private final FlightLogs logs;

    LogPages(CampaignService campaigns, FlightLogs logs) {
        this.campaigns = campaigns;
        this.logs = logs;
    }

    @GetMapping
    ModelAndView list(@PathVariable("id") String id, Model model) {
        return list(id, List.of(), HttpStatus.OK, model);
    }

    private ModelAndView list(String id, List<FieldProblem> problems, HttpStatus status, Model model) {
        describe(campaigns.drafts().find(id), model);
        model.addAttribute("logs", logs.of(id));
        model.addAttribute("problems", problems);
        return new ModelAndView("campaign/logs", status);
    }

    @PostMapping
    ModelAndView upload(
            @PathVariable("id") String id,
            @RequestParam(name = "file", required = false) @Nullable MultipartFile file,
            Model model)
            throws IOException {
        logs.requireOpen(id);
        if (file == null || file.isEmpty()) {
            return list(
                    id,
                    List.of(new FieldProblem("file", "missing", "a file")),
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    model);
        }
        try (InputStream content = file.getInputStream()) {
            FlightLog log = logs.add(id, file.getOriginalFilename(), content);
            return SeeOther.to(path(id) + "/logs/" + log.id());
        } catch (InvalidInputException e) {
            return list(id, e.problems(), HttpStatus.UNPROCESSABLE_CONTENT, model);
        }
    }

    @GetMapping(LOG)
    ModelAndView show(
            @PathVariable("id") String id,
            @PathVariable("log") String logId,
            @RequestParam(name = "columns", required = false) @Nullable String columns,
            @RequestAttribute("units") Units units,
            Model model) {
        FlightLog log = logs.find(id, logId);
        describe(campaigns.drafts().find(id), model);
        boolean asks = log.state() == LogState.UPLOADED
                || columns != null && !log.header().isEmpty();
        if (asks) {
            return columns(log, LogForms.columns(known(id, log), units.system()), HttpStatus.OK, model);
        }
        List<LogEvent> events = logs.events(id, logId);
        model.addAttribute("log", log);
        model.addAttribute("job", logs.job(id, logId).orElse(null));
        model.addAttribute("capped", log.left() > 0 ? LogView.capped(log, events) : null);
        model.addAttribute("lines", events.stream().map(LogView.Line::of).toList());
        model.addAttribute("plots", LogView.plots(log, logs.trace(id, logId), events));
        return new ModelAndView("campaign/log");
    }

    private List<LogColumn> known(String id, FlightLog log) {
        LogMapping mapping = log.mapping();
        return mapping != null
                ? mapping.columns()
                : logs.remembered(id, log.id()).map(LogMapping::columns).orElseGet(() -> ColumnGuess.of(log.header()));
    }

    private ModelAndView columns(FlightLog log, Form form, HttpStatus status, Model model) {
        List<Option> offered = new java.util.ArrayList<>(List.of(new Option("0", "Not recorded")));
        IntStream.range(0, log.header().size())
                .mapToObj(i -> new Option(
                        String.valueOf(i + 1), (i + 1) + ": " + log.header().get(i)))
                .forEach(offered::add);
        model.addAttribute("log", log);
        model.addAttribute("form", form);
        model.addAttribute("offered", offered);
        model.addAttribute("firstRows", logs.firstRows(log.draftId(), log.id()));
        model.addAttribute(
                "quantities",
                List.of(LogQuantity.values()).stream().map(Asked::of).toList());
        return new ModelAndView("campaign/log-columns", status);
    }

    /** A quantity that a column may hold. */
    public record Asked(String field, String label, List<Option> units) {
        static Asked of(LogQuantity quantity) {
            return new Asked(
                    LogMapping.field(quantity),
                    quantity.label(),
                    quantity.units().stream()
                            .map(u -> new Option(u.name(), u.label()))
                            .toList());
        }
    }

    @PostMapping(LOG + "/columns")
    ModelAndView map(
            @PathVariable("id") String id,
            @PathVariable("log") String logId,
            jakarta.servlet.http.HttpServletRequest request,
            Model model) {
        logs.requireOpen(id);
        FlightLog log = logs.find(id, logId);
        Form form = Form.posted(request.getParameterMap());
        List<LogColumn> columns = LogForms.columns(form);
        if (!form.hasProblems()) {
            try {
                logs.map(id, logId, new LogMapping(columns));
                return SeeOther.to(path(id) + "/logs/" + logId);
            } catch (InvalidInputException e) {
                form.refuse(e.problems());
            }
        }
        describe(campaigns.drafts().find(id), model);
        return columns(log, form, HttpStatus.UNPROCESSABLE_CONTENT, model);
    }

    @PostMapping(LOG + "/remove")
    ModelAndView remove(@PathVariable("id") String id, @PathVariable("log") String logId) {
        logs.remove(id, logId);
        return SeeOther.to(path(id) + "/logs");
    }

    static void describe(Draft<CampaignDocument> draft, Model model) {
        model.addAttribute("draft", draft);
        model.addAttribute("campaign", draft.content());
        model.addAttribute("base", path(draft.id()));
    }

    static String path(String draftId) {
        return "/campaigns/drafts/" + draftId;
    }
}
