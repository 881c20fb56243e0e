package org.vanewright.account.web.steward;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.account.LogDesk;
import org.vanewright.audit.AuditEntry;
import org.vanewright.audit.AuditFilter;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.record.RecordPage;

/** The audit log: to look at, and to take away. */
@Controller
class StewardLogPages {
    private static final String PATH = "/steward/log";

    private final LogDesk log;
    private final LogFiles files;

    StewardLogPages(LogDesk log, LogFiles files) {
        this.log = log;
        this.files = files;
    }

    @GetMapping(PATH)
    String list(
            @RequestParam(name = "event", required = false) @Nullable String event,
            @RequestParam(name = "words", required = false) @Nullable String words,
            @RequestParam(name = "cursor", required = false) @Nullable String cursor,
            Model model) {
        RecordPage<AuditEntry> page = log.page(AuditFilter.typed(event, words), cursor);
        model.addAttribute("entries", page.items());
        model.addAttribute("nextCursor", page.nextCursor());
        model.addAttribute("first", cursor == null);
        List<Option> events =
                log.events().stream().map(name -> new Option(name, name)).toList();
        model.addAttribute("events", events);
        model.addAttribute(
                "form", new Form(UnitSystem.METRIC).put("event", (Object) event).put("words", (Object) words));
        return "steward/log";
    }

    @GetMapping(PATH + ".csv")
    void csv(
            @RequestParam(name = "event", required = false) @Nullable String event,
            @RequestParam(name = "words", required = false) @Nullable String words,
            HttpServletResponse response)
            throws IOException {
        files.csv(log.export(AuditFilter.typed(event, words)), response);
    }

    @GetMapping(PATH + ".jsonl")
    void jsonLines(
            @RequestParam(name = "event", required = false) @Nullable String event,
            @RequestParam(name = "words", required = false) @Nullable String words,
            HttpServletResponse response)
            throws IOException {
        files.jsonLines(log.export(AuditFilter.typed(event, words)), response);
    }
}
