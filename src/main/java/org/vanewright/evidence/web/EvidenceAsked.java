package org.vanewright.evidence.web;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriUtils;
import org.vanewright.campaign.Measure;
import org.vanewright.engineering.inference.meta.TauEstimator;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.evidence.EvidenceQuery;
import org.vanewright.evidence.Scale;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;

/** What an address asks for: {@code quantity}, {@code group}, {@code scale}, {@code method}. */
final class EvidenceAsked {
    static final List<Option> QUANTITIES = Option.of(Measure.values(), Measure::label);
    static final List<Option> SCALES = Option.of(Scale.values(), Scale::label);
    static final List<Option> METHODS = Option.of(TauEstimator.values(), TauEstimator::words);

    private static final int LONGEST_GROUP = 200;

    private EvidenceAsked() {}

    /** The form with what is not said filled in. */
    static Form form(HttpServletRequest request) {
        Form form = Form.posted(request.getParameterMap());
        form.choiceOr("quantity", Measure.STALL_SPEED);
        form.choiceOr("scale", Scale.PERCENT);
        form.choiceOr("method", TauEstimator.REML);
        return form;
    }

    /** @throws InvalidInputException naming what cannot be read */
    static EvidenceQuery query(Form form) {
        Measure quantity = form.choice("quantity", Measure.class);
        Scale scale = form.choice("scale", Scale.class);
        TauEstimator estimator = form.choice("method", TauEstimator.class);
        String group = form.text("group");
        if (group != null && group.length() > LONGEST_GROUP) {
            form.refuse(new FieldProblem(
                    "group",
                    group.length() + " characters",
                    "a group’s key of at most " + LONGEST_GROUP + " characters"));
        }
        if (quantity == null || scale == null || estimator == null || form.isRefused()) {
            throw new InvalidInputException(form.problems());
        }
        return new EvidenceQuery(quantity, group, scale, estimator);
    }

    static @Nullable EvidenceQuery quiet(Form form) {
        try {
            return query(form);
        } catch (InvalidInputException e) {
            form.refuse(e.problems());
            return null;
        }
    }

    /** What stands in an address for a query. */
    static String parameters(EvidenceQuery query) {
        String group = query.group();
        return "quantity=" + query.quantity()
                + (group == null ? "" : "&group=" + UriUtils.encode(group, StandardCharsets.UTF_8))
                + "&scale=" + query.scale() + "&method=" + query.estimator();
    }
}
