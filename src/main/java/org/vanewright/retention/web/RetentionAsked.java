package org.vanewright.retention.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.retention.Counted;
import org.vanewright.retention.Grouping;
import org.vanewright.retention.RetentionQuery;

/** What an address asks for: {@code by}, {@code count}, {@code invented}. */
final class RetentionAsked {
    static final List<Option> BY = Option.of(Grouping.values(), Grouping::label);
    static final List<Option> COUNT = Option.of(Counted.values(), Counted::label);

    private RetentionAsked() {}

    /** The form with what is not said filled in; what cannot be read is noted in it. */
    static Form form(HttpServletRequest request) {
        Form form = Form.posted(request.getParameterMap());
        form.choiceOr("by", Grouping.ADHESIVE);
        form.choiceOr("count", Counted.ALL);
        return form;
    }

    /** @throws InvalidInputException naming {@code by} or {@code count} */
    static RetentionQuery query(Form form) {
        Grouping by = form.choice("by", Grouping.class);
        Counted counted = form.choice("count", Counted.class);
        if (by == null || counted == null) {
            throw new InvalidInputException(form.problems());
        }
        return new RetentionQuery(by, counted, form.checked("invented"));
    }

    /** What stands in an address for a query. */
    static String parameters(RetentionQuery query) {
        return "by=" + query.by() + "&count=" + query.counted() + (query.invented() ? "&invented=true" : "");
    }

    static @Nullable RetentionQuery quiet(Form form) {
        try {
            return query(form);
        } catch (InvalidInputException e) {
            form.refuse(e.problems());
            return null;
        }
    }
}
