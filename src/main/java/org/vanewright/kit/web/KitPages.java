package org.vanewright.kit.web;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.kit.KitImports;
import org.vanewright.kit.KitItem;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.Units;

/** Taking a kit in: sending it, seeing what it holds, keeping it. */
@Controller
@RequestMapping("/kits")
class KitPages {
    static final String IMPORT = "/imports/{id:[0-9a-f-]{36}}";

    private final KitImports imports;

    KitPages(KitImports imports) {
        this.imports = imports;
    }

    @GetMapping("/import")
    ModelAndView choose(Model model) {
        imports.requireImporter();
        return choose(List.of(), HttpStatus.OK, model);
    }

    private static ModelAndView choose(List<FieldProblem> problems, HttpStatus status, Model model) {
        model.addAttribute("problems", problems);
        return new ModelAndView("kit/import", status);
    }

    @PostMapping("/import")
    ModelAndView send(@RequestParam(name = "file", required = false) @Nullable MultipartFile file, Model model)
            throws IOException {
        imports.requireImporter();
        if (file == null || file.isEmpty()) {
            return choose(
                    List.of(new FieldProblem("file", "missing", "a kit")), HttpStatus.UNPROCESSABLE_CONTENT, model);
        }
        try (InputStream content = file.getInputStream()) {
            return SeeOther.to("/kits/imports/" + imports.send(content));
        } catch (InvalidInputException e) {
            return choose(e.problems(), HttpStatus.UNPROCESSABLE_CONTENT, model);
        }
    }

    @GetMapping(IMPORT)
    ModelAndView preview(@PathVariable("id") String id, @RequestAttribute("units") Units units, Model model) {
        try {
            model.addAttribute("kit", imports.preview(id, units));
        } catch (InvalidInputException e) {
            // what is here has changed since it was sent
            return choose(e.problems(), HttpStatus.UNPROCESSABLE_CONTENT, model);
        }
        return new ModelAndView("kit/preview");
    }

    @PostMapping(IMPORT + "/keep")
    ModelAndView keep(@PathVariable("id") String id, Model model) {
        try {
            KitItem layout = imports.keep(id);
            return SeeOther.to(layout.path());
        } catch (InvalidInputException e) {
            return choose(e.problems(), HttpStatus.UNPROCESSABLE_CONTENT, model);
        }
    }

    @PostMapping(IMPORT + "/discard")
    ModelAndView discard(@PathVariable("id") String id) {
        imports.discard(id);
        return SeeOther.to("/kits/import");
    }
}
