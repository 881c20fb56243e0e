package org.vanewright.kit.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.multipart.MultipartHttpServletRequest;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.kit.KitImports;
import org.vanewright.kit.KitItem;
import org.vanewright.kit.KitPreview;
import org.vanewright.platform.page.Units;

/** Kits as programs send them. Layouts' kits are downloaded at {@code /layouts/{slug}/kit.zip}. */
@RestController
@RequestMapping("/api/v1/kits/imports")
@Tag(name = "Kits", description = "Taking in what another instance has published.")
class KitApi {
    private static final String ID = "/{id:[0-9a-f-]{36}}";

    private final KitImports imports;

    KitApi(KitImports imports) {
        this.imports = imports;
    }

    /**
     * A kit that was sent.
     *
     * @param sha256 of the archive
     * @param keptAt absent until it is kept
     * @param fresh revisions that are not here yet, or were not
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Body(
            String id,
            String sha256,
            Instant sentAt,
            @Nullable Instant keptAt,
            KitItem layout,
            long fresh,
            List<KitItem> revisions,
            int photographs) {
        static Body of(KitPreview k) {
            return new Body(
                    k.id(), k.sha256(), k.sentAt(), k.keptAt(), k.layout(), k.fresh(), k.items(), k.photographs());
        }
    }

    @Operation(summary = "Send a kit as part \"file\"; nothing of it is kept before you say so")
    @PostMapping
    ResponseEntity<Body> send(HttpServletRequest request, @RequestAttribute("units") Units units) throws IOException {
        // Before the parts are looked at, which may be large.
        imports.requireImporter();
        MultipartFile file = request instanceof MultipartHttpServletRequest parts ? parts.getFile("file") : null;
        if (file == null) {
            throw new InvalidInputException(new FieldProblem("file", "missing", "a part with that name and a kit"));
        }
        try (InputStream content = file.getInputStream()) {
            String id = imports.send(content);
            return ResponseEntity.created(URI.create("/api/v1/kits/imports/" + id))
                    .cacheControl(CacheControl.noStore())
                    .body(Body.of(imports.preview(id, units)));
        }
    }

    @Operation(summary = "What a kit that you sent holds, and what becomes of it")
    @GetMapping(ID)
    ResponseEntity<Body> preview(@PathVariable("id") String id, @RequestAttribute("units") Units units) {
        return ResponseEntity.ok().cacheControl(CacheControl.noStore()).body(Body.of(imports.preview(id, units)));
    }

    @Operation(summary = "Keep it: its revisions stand here as imported until a reviewer accepts or refuses them")
    @PostMapping(ID + "/keep")
    ResponseEntity<Body> keep(@PathVariable("id") String id, @RequestAttribute("units") Units units) {
        imports.keep(id);
        return preview(id, units);
    }

    @Operation(summary = "Give it up")
    @DeleteMapping(ID)
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void discard(@PathVariable("id") String id) {
        imports.discard(id);
    }
}
