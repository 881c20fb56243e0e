package org.vanewright.review.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.HandlerMapping;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.record.DraftNotFoundException;
import org.vanewright.review.Remarks;

/** Gives every editor of a draft {@code remarks}, by field path, and {@code returned}, what came back with it. */
class DraftRemarks implements HandlerInterceptor {
    private final Remarks remarks;

    DraftRemarks(Remarks remarks) {
        this.remarks = remarks;
    }

    @Override
    public void postHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler, @Nullable ModelAndView page) {
        String view = page == null ? null : page.getViewName();
        if (page == null || view == null || view.startsWith("redirect:")) {
            return;
        }
        if (request.getAttribute(HandlerMapping.URI_TEMPLATE_VARIABLES_ATTRIBUTE) instanceof Map<?, ?> variables
                && variables.get("id") instanceof String id) {
            add(id, page);
        }
    }

    private void add(String id, ModelAndView page) {
        try {
            Remarks.OfDraft found = remarks.forDraft(id);
            if (found != null) {
                page.addObject("remarks", found.byField());
                page.addObject("returned", found);
            }
        } catch (DraftNotFoundException e) {
            // the page itself says so, or is about another draft
        }
    }
}
