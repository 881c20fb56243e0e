package org.vanewright.photograph.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.server.ResponseStatusException;
import org.vanewright.photograph.Photographs;

/** Serves photographs by their names, as pictures and nothing else. */
@Controller
class PhotographFiles {
    private static final String SHA_256 = "/photographs/{sha256:[0-9a-f]{64}}";
    private static final String POLICY = "default-src 'none'; sandbox; frame-ancestors 'none'";

    private final Photographs photographs;

    PhotographFiles(Photographs photographs) {
        this.photographs = photographs;
    }

    @GetMapping(SHA_256 + ".jpg")
    ResponseEntity<byte[]> large(@PathVariable("sha256") String sha256, HttpServletResponse response) {
        return send(sha256, false, response);
    }

    @GetMapping(SHA_256 + "-small.jpg")
    ResponseEntity<byte[]> small(@PathVariable("sha256") String sha256, HttpServletResponse response) {
        return send(sha256, true, response);
    }

    private ResponseEntity<byte[]> send(String sha256, boolean small, HttpServletResponse response) {
        Photographs.Served served =
                photographs.find(sha256, small).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        response.setHeader("Content-Security-Policy", POLICY);
        String name = "photograph-" + sha256.substring(0, 12) + (small ? "-small" : "") + ".jpg";
        return ResponseEntity.ok()
                .contentType(MediaType.IMAGE_JPEG)
                .contentLength(served.jpeg().length)
                .eTag("\"" + sha256 + (small ? "-small" : "") + "\"")
                .cacheControl(
                        served.isPublic()
                                ? CacheControl.maxAge(Duration.ofDays(365))
                                        .cachePublic()
                                        .immutable()
                                : CacheControl.noStore())
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline().filename(name).build().toString())
                .body(served.jpeg());
    }
}
