package org.vanewright.bench.web.page;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.util.UriComponentsBuilder;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Units;

/** The bench: calculators that need no account and keep nothing. */
@Controller
class BenchPages {
    private final List<Calculator> calculators;

    BenchPages(List<Calculator> calculators) {
        this.calculators = List.copyOf(calculators);
    }

    @GetMapping("/bench")
    String index(Model model) {
        model.addAttribute("calculators", calculators);
        return "bench/index";
    }

    /** A calculator with what was typed, and what comes of it; an example for whoever brings nothing. */
    @GetMapping(
            "/bench/{name:section|flow|atmosphere|airspeed|flat-plate|vane|bond|gps-airspeed|stall-reduction|comparison|sample-size}")
    String show(
            @PathVariable("name") String name,
            @RequestAttribute("units") Units units,
            HttpServletRequest asked,
            HttpServletResponse response,
            Model model) {
        Calculator calculator = calculators.stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
        Form form = Form.posted(asked.getParameterMap());
        boolean example = calculator.fields().stream().noneMatch(f -> form.has(f.path()));
        if (example) {
            calculator.example().forEach((path, value) -> form.put(path, (Object) value));
        }
        Answer answer = answer(calculator, form, units);
        if (answer == null) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        }
        model.addAttribute("calculator", calculator);
        model.addAttribute(
                "others", calculators.stream().filter(c -> c != calculator).toList());
        model.addAttribute("form", form);
        model.addAttribute("answer", answer);
        model.addAttribute("example", example);
        model.addAttribute("address", address(calculator, form));
        return "bench/calculator";
    }

    private static @Nullable Answer answer(Calculator calculator, Form form, Units units) {
        try {
            Answer answer = calculator.answer(form, units);
            return form.hasProblems() ? null : answer;
        } catch (InvalidInputException e) {
            e.problems().forEach(p -> form.refuse(onPage(p)));
            return null;
        }
    }

    /** Calculations name parts of a field; a page has one field for all of them. */
    private static FieldProblem onPage(FieldProblem p) {
        return new FieldProblem(
                p.field().replaceFirst("^section\\.", "").replaceFirst("\\[.*", ""), p.value(), p.allowed());
    }

    /** The page's path and query with everything that stands in the fields. */
    private static String address(Calculator calculator, Form form) {
        UriComponentsBuilder address = UriComponentsBuilder.fromPath("/bench/" + calculator.name());
        Map<String, String> values = form.values();
        for (Field field : calculator.fields()) {
            String value = values.getOrDefault(field.path(), "");
            if (!value.isBlank()) {
                address.queryParam(field.path(), "{" + field.path() + "}");
            }
        }
        return address.encode().buildAndExpand(values).toUriString();
    }
}
