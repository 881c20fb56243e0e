package org.vanewright.layout.web;

import java.util.function.Function;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.RevisionDrawings;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** Drawings of layouts that pages and lists load by themselves. */
@Controller
class LayoutPictures {
    private static final String AT = "/layouts/" + RecordPaths.REVISION;

    private final LayoutService layouts;
    private final LayoutPlanner planner;
    private final RevisionDrawings drawings;

    LayoutPictures(LayoutService layouts, LayoutPlanner planner, RevisionDrawings drawings) {
        this.layouts = layouts;
        this.planner = planner;
        this.drawings = drawings;
    }

    /**
     * Address of a surface in plan with its devices.
     *
     * @param surface counts from 1 in the order of the page
     */
    static String plan(Revision<LayoutDocument> layout, int surface, Units units) {
        return RevisionDrawings.address(
                "layouts", layout, planFile(surface, units.system().code()));
    }

    /**
     * Address of one pitch of a row.
     *
     * @param row counts from 1
     */
    static String closeUp(Revision<LayoutDocument> layout, int row) {
        return RevisionDrawings.address("layouts", layout, closeUpFile(row));
    }

    private static String planFile(int surface, String units) {
        return "/plans/" + surface + "-" + units + ".svg";
    }

    private static String closeUpFile(int row) {
        return "/rows/" + row + ".svg";
    }

    /** The first surface in plan without lettering, for lists. */
    @GetMapping(AT + RevisionDrawings.THUMBNAIL)
    ResponseEntity<byte[]> thumbnail(
            @PathVariable("slug") String slug, @PathVariable("number") int number, WebRequest request) {
        Units units = new Units(UnitSystem.METRIC);
        return send(
                request,
                layout(slug, number),
                RevisionDrawings.THUMBNAIL,
                plan -> LayoutDrawings.thumbnail(plan, "plan", units));
    }

    /** A surface in plan with its devices. */
    @GetMapping(AT + "/plans/{surface:[1-9][0-9]?}-{system:[a-z]{2,6}}.svg")
    ResponseEntity<byte[]> plan(
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            @PathVariable("surface") int surface,
            @PathVariable("system") String code,
            WebRequest request) {
        Revision<LayoutDocument> layout = layout(slug, number);
        UnitSystem system = UnitSystem.of(code);
        if (!system.code().equals(code)) {
            throw new RecordNotFoundException("layout", slug, number);
        }
        return send(request, layout, planFile(surface, code), plan -> {
            if (surface > plan.surfaces().size()) {
                throw new RecordNotFoundException("layout", slug, number);
            }
            return LayoutDrawings.surface(plan, surface - 1, new Units(system), "");
        });
    }

    /** One pitch of a row from outside the skin. */
    @GetMapping(AT + "/rows/{row:[1-9][0-9]?}.svg")
    ResponseEntity<byte[]> closeUp(
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            @PathVariable("row") int row,
            WebRequest request) {
        Revision<LayoutDocument> layout = layout(slug, number);
        if (row > layout.content().rows().size()) {
            throw new RecordNotFoundException("layout", slug, number);
        }
        return send(request, layout, closeUpFile(row), plan -> LayoutDrawings.closeUp(plan, row - 1));
    }

    private Revision<LayoutDocument> layout(String slug, int number) {
        return layouts.exactly(new RevisionRef(slug, number));
    }

    private ResponseEntity<byte[]> send(
            WebRequest request, Revision<LayoutDocument> layout, String file, Function<LayoutPlan, String> svg) {
        return drawings.send(request, layout, file, () -> svg.apply(planner.plan(layout.content())));
    }
}
