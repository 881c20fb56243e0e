package org.vanewright.bond.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.adhesive.AdhesiveService;
import org.vanewright.bond.BondAssumption;
import org.vanewright.bond.BondQuery;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/**
 * What the address of a bond check asks for.
 *
 * @param form every parameter as typed, with what cannot be read
 * @param revision of the layout; absent asks for the current one
 * @param adhesive slug; absent where none is chosen yet
 * @param adhesiveRevision exact one; absent asks for the published one
 * @param query what was read
 */
record BondForm(
        Form form,
        @Nullable Integer revision,
        @Nullable String adhesive,
        @Nullable Integer adhesiveRevision,
        BondQuery query) {
    private static final int LARGEST = 999_999;

    static BondForm of(HttpServletRequest request) {
        Form form = Form.posted(request.getParameterMap());
        BondQuery query = new BondQuery(
                form.number("speedKt"),
                form.number(BondAssumption.LOAD_FACTOR.field()),
                form.number(BondAssumption.SPEED_RATIO.field()),
                form.number(BondAssumption.SIDESLIP_DEG.field()),
                form.number(BondAssumption.KNOCK_N.field()),
                form.number(BondAssumption.TEMPERATURE_FACTOR.field()),
                form.number(BondAssumption.AGEING_FACTOR.field()),
                form.number(BondAssumption.SURFACE_FACTOR.field()),
                form.number(BondAssumption.BASE_MODULUS_MPA.field()),
                form.number(BondAssumption.TAPE_MODULUS_KPA.field()));
        return new BondForm(
                form, whole(form, "revision", 1), form.text("adhesive"), whole(form, "adhesiveRevision", 1), query);
    }

    /** A whole number; one that cannot be read is refused in the form. */
    static @Nullable Integer whole(Form form, String field, int least) {
        String typed = form.text(field);
        Integer number = form.integer(field);
        Checks checks = new Checks();
        checks.require(
                typed == null || number != null && number >= least && number <= LARGEST,
                field,
                typed,
                "a whole number from " + least + " to " + LARGEST);
        form.refuse(checks.problems());
        return checks.isClean() ? number : null;
    }

    @Nullable
    RevisionRef ref(String slug) {
        return revision == null ? null : new RevisionRef(slug, revision);
    }

    /** The adhesive; empty, with the problem noted in the form, where there is no such one that may be seen. */
    Optional<Revision<AdhesiveDocument>> find(AdhesiveService adhesives) {
        if (adhesive == null) {
            return Optional.empty();
        }
        Optional<Revision<AdhesiveDocument>> found = adhesiveRevision == null
                ? adhesives.latest(adhesive)
                : adhesives.find(new RevisionRef(adhesive, adhesiveRevision));
        Checks checks = new Checks();
        checks.require(found.isPresent(), "adhesive", adhesive, "the slug of a published adhesive");
        form.refuse(checks.problems());
        return found;
    }

    /** @throws InvalidInputException with every parameter that cannot be used */
    void throwIfAny() {
        if (form.hasProblems()) {
            throw new InvalidInputException(form.problems());
        }
    }
}
