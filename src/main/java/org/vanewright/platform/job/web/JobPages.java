package org.vanewright.platform.job.web;

import org.springframework.core.io.Resource;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.platform.job.Jobs;
import org.vanewright.platform.page.SeeOther;

/** How far long work has come. */
@Controller
class JobPages {
    private static final String JOB = "/jobs/{id:[0-9a-f-]{36}}";

    private final Jobs jobs;

    JobPages(Jobs jobs) {
        this.jobs = jobs;
    }

    /** Without scripts a browser asks again by itself. */
    @GetMapping(JOB)
    String show(@PathVariable("id") String id, Model model) {
        model.addAttribute("job", jobs.find(id));
        return "job/show";
    }

    @PostMapping(JOB + "/cancel")
    ModelAndView cancel(@PathVariable("id") String id) {
        jobs.cancel(id);
        return SeeOther.to("/jobs/" + id);
    }

    @GetMapping(JOB + "/file")
    ResponseEntity<Resource> file(@PathVariable("id") String id) {
        return JobFiles.answer(jobs, id);
    }
}
