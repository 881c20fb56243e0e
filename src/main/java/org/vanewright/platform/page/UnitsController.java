package org.vanewright.platform.page;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseCookie;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The switch between metric and US units. */
@Controller
class UnitsController {
    private static final Duration KEPT = Duration.ofDays(365);

    @PostMapping("/units")
    ResponseEntity<Void> choose(
            @RequestParam(name = "system", required = false) @Nullable String system,
            @RequestParam(name = "back", required = false) @Nullable String back,
            HttpServletRequest request) {
        ResponseCookie cookie = ResponseCookie.from(
                        PageContextFilter.UNITS_COOKIE, UnitSystem.of(system).code())
                .path("/")
                .maxAge(KEPT)
                .httpOnly(true)
                .secure(request.isSecure())
                .sameSite("Lax")
                .build();
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.SET_COOKIE, cookie.toString())
                .location(URI.create(LocalPath.orHome(back)))
                .build();
    }
}
