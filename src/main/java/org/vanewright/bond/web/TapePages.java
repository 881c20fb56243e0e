package org.vanewright.bond.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.bond.LayoutTape;
import org.vanewright.bond.TapeQuery;
import org.vanewright.bond.TapeService;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.DxfWriter;
import org.vanewright.engineering.drawing.SvgWriter;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.tape.TapePlanDrawing;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.GeneratedFile;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Cautions;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** The tape of a layout: how much, and how it is cut. */
@Controller
class TapePages {
    private static final String AT = "/layouts/" + RecordPaths.SLUG + "/tape-plan";
    private static final MediaType SVG = MediaType.parseMediaType("image/svg+xml;charset=UTF-8");
    private static final MediaType DXF = MediaType.parseMediaType("image/vnd.dxf");
    private static final double SHOWN_MM = 320;

    private final LayoutService layouts;
    private final TapeService tapes;
    private final Downloads downloads;
    private final Cautions cautions;

    TapePages(LayoutService layouts, TapeService tapes, Downloads downloads, Cautions cautions) {
        this.layouts = layouts;
        this.tapes = tapes;
        this.downloads = downloads;
        this.cautions = cautions;
    }

    /** What an address asks for; what cannot be read is refused in the form. */
    private record Asked(Form form, @Nullable Integer revision, TapeQuery query) {
        static Asked of(HttpServletRequest request) {
            Form form = Form.posted(request.getParameterMap());
            Integer revision = BondForm.whole(form, "revision", 1);
            TapeQuery query = new TapeQuery(form.number("rollWidthMm"), BondForm.whole(form, "spares", 0));
            return new Asked(form, revision, query);
        }
    }

    @GetMapping(AT)
    String page(
            @PathVariable("slug") String slug, HttpServletRequest request, HttpServletResponse response, Model model) {
        Asked asked = Asked.of(request);
        Revision<LayoutDocument> layout = asked.revision() == null
                ? layouts.shown(slug)
                : layouts.exactly(new RevisionRef(slug, asked.revision()));
        Form form = asked.form();
        model.addAttribute("revision", layout);
        model.addAttribute("layout", layout.content());
        model.addAttribute("form", form);
        if (!form.hasProblems()) {
            try {
                show(tapes.of(layout, asked.query()), form, model);
            } catch (InvalidInputException e) {
                form.refuse(e.problems());
            }
        }
        if (form.hasProblems()) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        }
        return "bond/tape";
    }

    private static void show(LayoutTape tape, Form form, Model model) {
        form.put("rollWidthMm", (Double) tape.plan().rollWidthMm());
        form.put("spares", (Object) tape.spares());
        Drawing drawing = TapePlanDrawing.forPage(tape.plan(), "Tape on the roll", SHOWN_MM);
        model.addAttribute("tape", tape);
        model.addAttribute("plan", tape.plan());
        model.addAttribute("drawingSvg", SvgWriter.inline(drawing, "drawing", "tape"));
        model.addAttribute("whole", tape.plan().lengthMm() <= SHOWN_MM);
        model.addAttribute("method", LayoutTape.METHOD);
    }

    @GetMapping(AT + ".{format:svg|dxf}")
    ResponseEntity<byte[]> file(
            @PathVariable("slug") String slug,
            @PathVariable("format") String format,
            HttpServletRequest asked,
            WebRequest request) {
        Asked query = Asked.of(asked);
        Revision<LayoutDocument> layout = query.revision() == null
                ? layouts.published(slug)
                : layouts.exactly(new RevisionRef(slug, query.revision()));
        if (query.form().hasProblems()) {
            throw new InvalidInputException(query.form().problems());
        }
        boolean svg = format.equals("svg");
        String name = layout.slug() + "-r" + layout.number() + "-tape-plan" + (svg ? ".svg" : "-mm.dxf");
        String key = "tape " + format + " " + query.query();
        return downloads.send(
                request,
                new GeneratedFile(name, svg ? SVG : DXF, key, false, () -> bytes(tapes.of(layout, query.query()), svg)),
                query.revision() != null,
                layout);
    }

    private byte[] bytes(LayoutTape tape, boolean svg) {
        Revision<LayoutDocument> layout = tape.layout();
        List<String> lines = new ArrayList<>();
        lines.add("Layout " + layout.slug() + " · revision " + layout.number() + " · SHA-256 " + layout.shortHash()
                + (layout.isReleased() ? "" : " · " + Revision.NOT_PUBLISHED));
        tape.plan().kinds().forEach(k -> lines.add(k.count() + " × " + k.name()));
        lines.add("True scale, millimetres. Measure the bars before use.");
        lines.addAll(cautions.all(layout.content().invented()));
        Drawing drawing = TapePlanDrawing.forCutter(tape.plan(), layout.printedName() + " · tape", lines);
        return svg
                ? SvgWriter.write(drawing).getBytes(StandardCharsets.UTF_8)
                : DxfWriter.write(drawing).getBytes(StandardCharsets.US_ASCII);
    }
}
