package org.vanewright.bond.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.adhesive.AdhesiveService;
import org.vanewright.bond.BondAssumption;
import org.vanewright.bond.BondService;
import org.vanewright.bond.LayoutBond;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** Whether the devices of a layout hold on an adhesive. */
@Controller
class BondPages {
    private static final int MOST_CHOICES = 100;
    private static final List<BondAssumption> SHOWN = List.of(
            BondAssumption.LOAD_FACTOR,
            BondAssumption.KNOCK_N,
            BondAssumption.TEMPERATURE_FACTOR,
            BondAssumption.AGEING_FACTOR,
            BondAssumption.SURFACE_FACTOR);
    private static final List<BondAssumption> FURTHER = List.of(
            BondAssumption.SPEED_RATIO,
            BondAssumption.SIDESLIP_DEG,
            BondAssumption.BASE_MODULUS_MPA,
            BondAssumption.TAPE_MODULUS_KPA);

    private final LayoutService layouts;
    private final AdhesiveService adhesives;
    private final BondService bonds;

    BondPages(LayoutService layouts, AdhesiveService adhesives, BondService bonds) {
        this.layouts = layouts;
        this.adhesives = adhesives;
        this.bonds = bonds;
    }

    @GetMapping("/layouts/" + RecordPaths.SLUG + "/bond")
    String bond(
            @PathVariable("slug") String slug, HttpServletRequest request, HttpServletResponse response, Model model) {
        BondForm asked = BondForm.of(request);
        RevisionRef ref = asked.ref(slug);
        Revision<LayoutDocument> layout = ref == null ? layouts.shown(slug) : layouts.exactly(ref);
        Form form = asked.form();
        Optional<Revision<AdhesiveDocument>> adhesive = asked.find(adhesives);
        model.addAttribute("revision", layout);
        model.addAttribute("layout", layout.content());
        model.addAttribute("adhesives", choices());
        model.addAttribute("assumptions", SHOWN);
        model.addAttribute("further", FURTHER);
        model.addAttribute("form", form);
        if (adhesive.isPresent() && !form.hasProblems()) {
            try {
                show(bonds.of(layout, adhesive.get(), asked.query()), form, model);
            } catch (InvalidInputException e) {
                form.refuse(e.problems());
            }
        }
        if (form.hasProblems()) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        }
        return "bond/bond";
    }

    private static void show(LayoutBond bond, Form form, Model model) {
        fill(form, bond);
        model.addAttribute("bond", bond);
        model.addAttribute("conditions", bond.conditions());
        model.addAttribute(
                "rows", bond.rows().stream().map(r -> BondLooks.row(r, bond)).toList());
        model.addAttribute("strengths", BondStrengths.of(bond));
        model.addAttribute("method", LayoutBond.METHOD);
        model.addAttribute("sources", LayoutBond.SOURCES);
        model.addAttribute("limits", LayoutBond.LIMITS);
    }

    /** What was left empty shows what was calculated with. */
    private static void fill(Form form, LayoutBond bond) {
        BondLooks.values(bond.conditions()).forEach((field, value) -> {
            if (form.text(field) == null) {
                form.put(field, value);
            }
        });
    }

    private List<Option> choices() {
        return adhesives.list(null, MOST_CHOICES).items().stream()
                .map(r -> new Option(r.slug(), r.content().name() + (r.content().invented() ? " (invented)" : "")))
                .toList();
    }
}
