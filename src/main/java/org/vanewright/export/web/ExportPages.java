package org.vanewright.export.web;

import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.export.Exports;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.page.SeeOther;

/** Everything public as one file. */
@Controller
class ExportPages {
    static final String FILE = "/export/record.zip";

    private static final MediaType ZIP = MediaType.parseMediaType("application/zip");

    private final Exports exports;
    private final Downloads downloads;

    ExportPages(Exports exports, Downloads downloads) {
        this.exports = exports;
        this.downloads = downloads;
    }

    @GetMapping("/export")
    String show(Model model) {
        model.addAttribute("export", exports.status());
        return "export/show";
    }

    @PostMapping("/export")
    ModelAndView start(WebRequest request) {
        downloads.admit(request);
        exports.start();
        return SeeOther.to("/export");
    }

    /** The last one that was made, whole or the ranges that are asked for. */
    @GetMapping(FILE)
    ResponseEntity<Resource> file(WebRequest request) {
        downloads.admit(request);
        Exports.Made made = exports.file();
        return ResponseEntity.ok()
                .eTag("\"" + made.tag() + "\"")
                .cacheControl(CacheControl.noCache().cachePublic())
                .contentType(ZIP)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(made.name())
                                .build()
                                .toString())
                .body(made.content());
    }
}
