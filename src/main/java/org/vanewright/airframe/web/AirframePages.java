package org.vanewright.airframe.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeService;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.platform.RevisionDrawings;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordPage;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** Browsing and reading airframes. */
@Controller
class AirframePages {
    private static final int PER_PAGE = 12;

    private final AirframeService airframes;
    private final RevisionDrawings drawings;

    AirframePages(AirframeService airframes, RevisionDrawings drawings) {
        this.airframes = airframes;
        this.drawings = drawings;
    }

    /**
     * An airframe in the list.
     *
     * @param picture address of its wing in plan, without lettering; null where it has none
     */
    public record Card(
            Revision<AirframeDocument> revision, @Nullable String picture) {}

    @GetMapping("/airframes")
    String browse(@RequestParam(name = "cursor", required = false) @Nullable String cursor, Model model) {
        RecordPage<Revision<AirframeDocument>> page = airframes.list(cursor, PER_PAGE);
        List<Card> cards = page.items().stream()
                .map(r -> new Card(r, hasWing(r.content()) ? RevisionDrawings.thumbnail("airframes", r) : null))
                .toList();
        model.addAttribute("cards", cards);
        model.addAttribute("first", cursor == null);
        model.addAttribute("nextCursor", page.nextCursor());
        return "airframe/browse";
    }

    private static boolean hasWing(AirframeDocument airframe) {
        return airframe.surfaces().stream().anyMatch(s -> s.kind() == SurfaceDocument.Kind.WING);
    }

    @GetMapping("/airframes/" + RecordPaths.SLUG)
    String latest(@PathVariable("slug") String slug, @RequestAttribute("units") Units units, Model model) {
        return show(airframes.shown(slug), units, model);
    }

    @GetMapping("/airframes/" + RecordPaths.REVISION)
    String revision(
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            @RequestAttribute("units") Units units,
            Model model) {
        return show(airframes.exactly(new RevisionRef(slug, number)), units, model);
    }

    /** A small drawing of the wing, for lists that load it by itself. */
    @GetMapping("/airframes/" + RecordPaths.REVISION + RevisionDrawings.THUMBNAIL)
    ResponseEntity<byte[]> thumbnail(
            @PathVariable("slug") String slug, @PathVariable("number") int number, WebRequest request) {
        Revision<AirframeDocument> revision = airframes.exactly(new RevisionRef(slug, number));
        return drawings.send(
                request,
                revision,
                RevisionDrawings.THUMBNAIL,
                () -> AirframeDrawings.thumbnail(revision.content(), "plan", new Units(UnitSystem.METRIC))
                        .orElseThrow(() -> new RecordNotFoundException("airframe", slug, number)));
    }

    private String show(Revision<AirframeDocument> revision, Units units, Model model) {
        model.addAttribute("revision", revision);
        model.addAttribute("airframe", revision.content());
        model.addAttribute("surfaces", AirframeDrawings.surfaces(revision.content(), units));
        model.addAttribute("history", airframes.listedHistory(revision.slug()));
        return "airframe/show";
    }
}
