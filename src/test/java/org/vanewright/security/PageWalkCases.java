package org.vanewright.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.vanewright.testing.Caller;
import org.vanewright.testing.SignedIn;

/** Who gets into each page, form and file. */
abstract class PageWalkCases extends WalkCases {
    private static final RouteTable TABLE = RouteTable.read("pages.txt");

    private final Map<String, Caller> callers = new LinkedHashMap<>();

    @Test
    void everybodyGetsIntoThePagesThatAreTheirs() {
        callers.put("visitor", newVisitor());
        callers.put("author", signIn(author));
        callers.put("other", signIn(other));
        callers.put("maintainer", signIn(maintainer));
        callers.put("steward", signIn(steward));
        assertThat(TABLE.callers()).containsExactlyElementsOf(callers.keySet());
        TABLE.lines().forEach(line -> {
            for (int i = 0; i < line.expected().size(); i++) {
                String caller = TABLE.callers().get(i);
                compare(line, caller, line.expected().get(i), call(line, caller));
            }
        });
        assertThat(surprises()).isEmpty();
    }

    private HttpResponse<String> call(RouteTable.Line line, String name) {
        Caller caller = Objects.requireNonNull(callers.get(name));
        String path = subjects.fill(line.call());
        String[] headers = {"Accept", "text/html, */*;q=0.5", "X-Forwarded-For", network()};
        HttpResponse<String> answer = line.method().equals("GET")
                ? caller.get(path, headers)
                : caller.postForm(path, Forms.fields(subjects.fill(line.body())), headers);
        if (path.contains("sign-out")) {
            callers.put(name, caller instanceof SignedIn signedIn ? signIn(signedIn.person()) : newVisitor());
        }
        return answer;
    }
}
