package org.vanewright.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.core.io.ClassPathResource;
import org.vanewright.account.TokenScope;
import org.vanewright.testing.Caller;
import org.vanewright.testing.SignedIn;

/** Who gets into each address of the API, with tokens of each scope. */
abstract class ApiWalkCases extends WalkCases {
    private static final RouteTable TABLE = RouteTable.read("api.txt");

    @Test
    void everyTokenOpensWhatItsScopeSays() {
        Map<String, String> bearers = new LinkedHashMap<>();
        bearers.put("read", bearer(author, TokenScope.READ));
        bearers.put("submit", bearer(author, TokenScope.SUBMIT));
        bearers.put("other", bearer(other, TokenScope.READ, TokenScope.SUBMIT));
        bearers.put("reviewer", bearer(maintainer, TokenScope.REVIEW));
        bearers.put("steward", bearer(steward, TokenScope.READ, TokenScope.SUBMIT, TokenScope.REVIEW));
        assertThat(TABLE.callers()).first().isEqualTo("visitor");
        assertThat(TABLE.callers().stream().skip(1)).containsExactlyElementsOf(bearers.keySet());
        SignedIn session = signIn(author);
        Caller visitor = newVisitor();
        for (RouteTable.Line line : TABLE.lines()) {
            String open = line.expected().get(0);
            compare(line, "visitor", open, call(line, visitor, null));
            compare(line, "a session without a token", open, call(line, session, null));
            for (int i = 1; i < line.expected().size(); i++) {
                String name = TABLE.callers().get(i);
                compare(line, name, line.expected().get(i), call(line, visitor, bearers.get(name)));
            }
        }
        assertThat(surprises()).isEmpty();
    }

    private HttpResponse<String> call(RouteTable.Line line, Caller caller, @Nullable String bearer) {
        List<String> headers = new ArrayList<>(List.of("X-Forwarded-For", network(), "If-Match", "*"));
        String body = body(line);
        if (!body.isEmpty()) {
            headers.addAll(List.of("Content-Type", "application/json"));
        }
        if (bearer != null) {
            headers.addAll(List.of("Authorization", bearer));
        }
        return caller.call(line.method(), subjects.fill(line.call()), body, headers.toArray(new String[0]));
    }

    private String body(RouteTable.Line line) {
        if (line.body().equals("@document")) {
            return subjects.document(Subjects.plural(line.call())).toString();
        }
        return line.body().startsWith("@") ? example(line.body().substring(1)) : line.body();
    }

    private static String example(String name) {
        try {
            return new ClassPathResource("api/examples/" + name + ".json").getContentAsString(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
