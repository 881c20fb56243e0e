package org.vanewright.platform;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Objects;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;

/**
 * Answers requests that the server refuses before any filter sees them, such as an address with a slash in disguise, in
 * this service's own words and with its headers.
 */
@Component
class UnreadableRequests implements WebServerFactoryCustomizer<TomcatServletWebServerFactory> {
    private static final String PAGE = """
            <!DOCTYPE html>
            <html lang="en">
            <head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
            <title>%2$s – Vanewright</title><link rel="stylesheet" href="%4$s/css/vanewright.css"></head>
            <body><main id="main"><p class="kicker">Error %1$d</p><h1>%2$s</h1><p class="lede">%3$s</p>
            <p><a href="%4$s/">Back to the start</a></p></main></body>
            </html>
            """;

    private final ProblemWriter problems;
    private final String prefix;

    UnreadableRequests(ProblemWriter problems, @Value("${server.servlet.context-path:}") String prefix) {
        this.problems = problems;
        this.prefix = prefix;
    }

    @Override
    public void customize(TomcatServletWebServerFactory factory) {
        // The last valve reports first; those before it find the report made.
        factory.addContextCustomizers(
                context -> context.getParent().getPipeline().addValve(new Report()));
    }

    private final class Report extends ErrorReportValve {
        @Override
        protected void report(Request request, Response response, @Nullable Throwable failure) {
            int status = response.getStatus();
            if (status < 400 || response.getContentWritten() > 0 || !response.setErrorReported()) {
                return;
            }
            try {
                SecurityHeaders.set(response.getResponse());
                answer(Objects.requireNonNullElse(request.getRequestURI(), ""), status, response.getResponse());
            } catch (IOException e) {
                container.getLogger().debug("the caller went away", e);
            }
        }
    }

    private void answer(String address, int status, HttpServletResponse response) throws IOException {
        String title = PlainWords.title(status);
        String detail = PlainWords.detail(status);
        if (address.startsWith(prefix + "/api/")) {
            problems.write(response, Problems.of(HttpStatusCode.valueOf(status), title, detail));
        } else {
            response.setContentType(MediaType.TEXT_HTML_VALUE + ";charset=UTF-8");
            response.getWriter().write(PAGE.formatted(status, title, detail, prefix));
        }
        response.flushBuffer();
    }
}
