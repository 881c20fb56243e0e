package org.vanewright.bond.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.adhesive.AdhesiveService;
import org.vanewright.bond.BondCase;
import org.vanewright.bond.BondConditions;
import org.vanewright.bond.BondService;
import org.vanewright.bond.LayoutBond;
import org.vanewright.bond.RowBond;
import org.vanewright.bond.Weakest;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** The bond of a layout as JSON. */
@RestController
@Tag(name = "Bonds", description = "What a bond is asked to bear beside what it can. No margin is an approval.")
class BondApi {
    private final LayoutService layouts;
    private final AdhesiveService adhesives;
    private final BondService bonds;

    BondApi(LayoutService layouts, AdhesiveService adhesives, BondService bonds) {
        this.layouts = layouts;
        this.adhesives = adhesives;
        this.bonds = bonds;
    }

    /**
     * A check.
     *
     * @param layout exact revision
     * @param airframe exact revision
     * @param adhesive exact revision
     * @param conditions what the bonds are asked to bear
     * @param rows that carry devices
     * @param method one paragraph
     * @param sources citations
     * @param validity limits of it
     */
    record Body(
            RevisionRef layout,
            RevisionRef airframe,
            RevisionRef adhesive,
            BondConditions conditions,
            List<Row> rows,
            String method,
            List<String> sources,
            List<String> validity) {}

    /** A row; see {@link RowBond}. */
    record Row(
            int row,
            String name,
            RevisionRef device,
            int count,
            double areaMm2,
            double angleDeg,
            double normalForceCoefficient,
            BondCase air,
            BondCase knock,
            List<RowBond.AtSpeed> alongSpeed,
            double knockAsSpeedKt,
            @Nullable Weakest weakest,
            @Nullable String weakestInWords) {
        static Row of(RowBond r) {
            Weakest weakest = r.weakest().orElse(null);
            return new Row(
                    r.index() + 1,
                    r.name(),
                    r.device().ref(),
                    r.count(),
                    r.areaMm2(),
                    r.angleDeg(),
                    r.normalForceCoefficient(),
                    r.air(),
                    r.knock(),
                    r.alongSpeed(),
                    r.knockAsSpeedKt(),
                    weakest,
                    weakest == null ? null : weakest.words());
        }
    }

    @GetMapping(path = "/api/v1/layouts/" + RecordPaths.SLUG + "/bond", produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            summary = "Stress and margins of the bond of each row, by the air and by a knock",
            parameters = {
                @Parameter(name = "adhesive", required = true, description = "slug of a published adhesive"),
                @Parameter(name = "adhesiveRevision", description = "an exact one"),
                @Parameter(name = "revision", description = "of the layout; the current one if absent"),
                @Parameter(name = "speedKt", description = "equivalent airspeed; never-exceed speed if absent"),
                @Parameter(name = "loadFactor"),
                @Parameter(name = "speedRatio"),
                @Parameter(name = "sideslipDeg"),
                @Parameter(name = "knockN"),
                @Parameter(name = "temperatureFactor"),
                @Parameter(name = "ageingFactor"),
                @Parameter(name = "surfaceFactor"),
                @Parameter(name = "baseModulusMPa"),
                @Parameter(name = "tapeModulusKPa")
            })
    Body bond(@PathVariable("slug") String slug, @Parameter(hidden = true) HttpServletRequest request) {
        BondForm asked = BondForm.of(request);
        RevisionRef ref = asked.ref(slug);
        Revision<LayoutDocument> layout = ref == null ? layouts.published(slug) : layouts.exactly(ref);
        if (asked.adhesive() == null) {
            asked.form().refuse(new FieldProblem("adhesive", "missing", "the slug of a published adhesive"));
        }
        Revision<AdhesiveDocument> adhesive = asked.find(adhesives).orElse(null);
        asked.throwIfAny();
        if (adhesive == null) {
            throw new InvalidInputException(asked.form().problems());
        }
        LayoutBond bond = bonds.of(layout, adhesive, asked.query());
        return new Body(
                layout.ref(),
                bond.airframe().ref(),
                adhesive.ref(),
                bond.conditions(),
                bond.rows().stream().map(Row::of).toList(),
                LayoutBond.METHOD,
                LayoutBond.SOURCES,
                LayoutBond.LIMITS);
    }
}
