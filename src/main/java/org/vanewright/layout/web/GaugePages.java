package org.vanewright.layout.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
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
import org.vanewright.engineering.gauge.Gauge;
import org.vanewright.engineering.gauge.GaugeSettings;
import org.vanewright.engineering.gauge.GaugeSolid;
import org.vanewright.engineering.gauge.RowGauges;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.solid.SolidLabel;
import org.vanewright.engineering.solid.StlWriter;
import org.vanewright.engineering.solid.ThreeMfWriter;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutGauges;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.GeneratedFile;
import org.vanewright.platform.HeapShare;
import org.vanewright.platform.form.Form;
import org.vanewright.record.Revision;
import org.vanewright.record.web.RecordPaths;

/** Placing gauges of a layout: which are needed, and each as a solid to print. */
@Controller
class GaugePages {
    private static final String AT = "/layouts/" + RecordPaths.SLUG;
    private static final MediaType STL = MediaType.parseMediaType("model/stl");
    private static final MediaType THREE_MF = MediaType.parseMediaType(ThreeMfWriter.MEDIA_TYPE);
    private static final long KEPT_CHARACTERS = HeapShare.bytes(10);

    private final LayoutService layouts;
    private final LayoutGauges gauges;
    private final Downloads downloads;
    private final Cache<String, String> pictures = Caffeine.newBuilder()
            .maximumWeight(KEPT_CHARACTERS)
            .weigher((String key, String svg) -> svg.length())
            .build();

    GaugePages(LayoutService layouts, LayoutGauges gauges, Downloads downloads) {
        this.layouts = layouts;
        this.gauges = gauges;
        this.downloads = downloads;
    }

    @GetMapping(AT + "/gauges")
    String page(
            @PathVariable("slug") String slug, HttpServletRequest request, HttpServletResponse response, Model model) {
        GaugeQuery query = GaugeQuery.of(request);
        Revision<LayoutDocument> layout = query.shown(slug, layouts);
        Form form = query.form();
        List<GaugeView> views = form.hasProblems() ? List.of() : views(layout, query.settings());
        if (form.hasProblems()) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        }
        fill(form, query.settings());
        model.addAttribute("revision", layout);
        model.addAttribute("layout", layout.content());
        model.addAttribute("form", form);
        model.addAttribute("asked", query.settings());
        model.addAttribute("rows", views);
        model.addAttribute("method", GaugeTable.METHOD);
        model.addAttribute("validity", GaugeTable.VALIDITY);
        return "layout/gauges";
    }

    private List<GaugeView> views(Revision<LayoutDocument> layout, GaugeSettings settings) {
        List<GaugeView> views = new ArrayList<>();
        for (RowGauges row : gauges.of(layout, settings)) {
            views.add(new GaugeView(row, picture(layout, row)));
        }
        return views;
    }

    private @Nullable String picture(Revision<LayoutDocument> layout, RowGauges row) {
        if (row.gauges().isEmpty()) {
            return null;
        }
        Gauge first = row.gauges().get(0);
        String id = "gauge-" + row.row() + "-" + (row.wing().ordinal() + 1);
        return pictures.get(
                layout.contentKey() + " " + row.settings() + " " + id,
                key -> GaugeView.picture(gauges.forPicture(layout, row, first), row, id));
    }

    private static void fill(Form form, GaugeSettings settings) {
        fill(form, "clearanceMm", settings.clearanceMm());
        fill(form, "gapMm", settings.gapMm());
        fill(form, "placeMm", settings.placeMm());
        fill(form, "thicknessMm", settings.thicknessMm());
        fill(form, "widthMm", settings.widthMm());
        fill(form, "wrapMm", settings.wrapMm());
    }

    private static void fill(Form form, String field, double value) {
        if (form.text(field) == null) {
            form.put(field, Double.valueOf(value));
        }
    }

    /** Turned as it is best printed: standing on a side face. */
    @GetMapping(AT + "/gauge.{format:stl|3mf}")
    ResponseEntity<byte[]> file(
            @PathVariable("slug") String slug,
            @PathVariable("format") String format,
            HttpServletRequest asked,
            WebRequest request) {
        GaugeQuery query = GaugeQuery.of(asked);
        query.throwIfAny();
        Revision<LayoutDocument> layout = query.published(slug, layouts);
        return downloads.send(
                request,
                "gauge " + format + " " + query.key(),
                query.revision() != null,
                layout,
                () -> gaugeFile(layout, query, format));
    }

    private GeneratedFile gaugeFile(Revision<LayoutDocument> layout, GaugeQuery query, String format) {
        RowGauges row = query.rowOf(layout, gauges);
        Gauge gauge = query.gaugeOf(row);
        String name = layout.slug() + "-r" + layout.number() + "-gauge-row-" + query.row() + "-"
                + (row.wing().name().equals("LEFT") ? "left" : "right") + "-" + gauge.number() + "-of-" + gauge.of()
                + "." + format;
        boolean stl = format.equals("stl");
        return new GeneratedFile(name, stl ? STL : THREE_MF, query.key(), false, () -> bytes(layout, row, gauge, stl));
    }

    private byte[] bytes(Revision<LayoutDocument> layout, RowGauges row, Gauge gauge, boolean stl) {
        Mesh mesh = GaugeSolid.forPrinting(gauges.solid(layout, row, gauge));
        String what = "Placing gauge, row " + (row.row() + 1) + " "
                + (row.wing().name().equals("LEFT") ? "left" : "right") + ", " + gauge.number() + " of " + gauge.of();
        SolidLabel label = new SolidLabel(layout.printedName() + ": " + what, what, layout.number(), layout.sha256());
        return stl ? StlWriter.write(mesh, label) : ThreeMfWriter.write(mesh, label);
    }
}
