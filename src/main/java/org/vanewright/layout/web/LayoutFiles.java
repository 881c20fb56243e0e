package org.vanewright.layout.web;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.LayoutService;
import org.vanewright.layout.StationCsv;
import org.vanewright.layout.StationRow;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.GeneratedFile;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** The files of a layout, made on demand from one revision. */
@Controller
class LayoutFiles {
    private static final String AT = "/layouts/" + RecordPaths.SLUG;
    private static final MediaType CSV = MediaType.parseMediaType("text/csv;charset=UTF-8");

    private final LayoutService layouts;
    private final LayoutPlanner planner;
    private final TemplateFiles templates;
    private final Downloads downloads;

    LayoutFiles(LayoutService layouts, LayoutPlanner planner, TemplateFiles templates, Downloads downloads) {
        this.layouts = layouts;
        this.planner = planner;
        this.templates = templates;
        this.downloads = downloads;
    }

    /** {@code paper} and {@code rollWidthMm} are for PDF; a cutter's file is one drawing. */
    @GetMapping(AT + "/template.{format:pdf|svg|dxf}")
    ResponseEntity<byte[]> template(
            @PathVariable("slug") String slug,
            @PathVariable("format") String suffix,
            @RequestParam(name = "revision", required = false) @Nullable Integer revision,
            @RequestParam(name = "side", required = false) @Nullable String side,
            @RequestParam(name = "pattern", required = false) @Nullable String pattern,
            @RequestParam(name = "row", required = false) @Nullable String row,
            @RequestParam(name = "paper", required = false) @Nullable String paper,
            @RequestParam(name = "rollWidthMm", required = false) @Nullable String rollWidthMm,
            WebRequest request) {
        TemplateFormat format = TemplateFormat.valueOf(suffix.toUpperCase(Locale.ROOT));
        TemplateRequest asked = format.paged()
                ? TemplateRequest.of(side, pattern, row, paper, rollWidthMm)
                : TemplateRequest.of(side, pattern, row, null, null);
        Revision<LayoutDocument> layout = revision(slug, revision);
        return send(
                request,
                layout,
                revision,
                format.fileName(asked),
                format.type(),
                asked.key(),
                () -> templates.write(format, layout, asked));
    }

    @GetMapping(AT + "/stations.csv")
    ResponseEntity<byte[]> stations(
            @PathVariable("slug") String slug,
            @RequestParam(name = "revision", required = false) @Nullable Integer revision,
            WebRequest request) {
        Revision<LayoutDocument> layout = revision(slug, revision);
        return send(
                request,
                layout,
                revision,
                "stations.csv",
                CSV,
                "",
                () -> StationCsv.write(StationRow.of(layout.content(), planner.plan(layout.content())))
                        .getBytes(StandardCharsets.UTF_8));
    }

    private Revision<LayoutDocument> revision(String slug, @Nullable Integer number) {
        return number == null ? layouts.published(slug) : layouts.exactly(new RevisionRef(slug, number));
    }

    private ResponseEntity<byte[]> send(
            WebRequest request,
            Revision<LayoutDocument> layout,
            @Nullable Integer fixed,
            String name,
            MediaType type,
            String key,
            Supplier<byte[]> bytes) {
        String fileName = layout.slug() + "-r" + layout.number() + "-" + name;
        return downloads.send(
                request, new GeneratedFile(fileName, type, name + " " + key, false, bytes), fixed != null, layout);
    }
}
