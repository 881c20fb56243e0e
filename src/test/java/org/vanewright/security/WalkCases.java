package org.vanewright.security;

import java.net.URI;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.testing.ServerTest;

/** People who call every line of a table, and what they got that they should not, or did not get that they should. */
abstract class WalkCases extends ServerTest {
    private static final AtomicInteger NETWORK = new AtomicInteger();

    private final List<String> surprises = new ArrayList<>();

    protected NewPerson author;
    protected NewPerson other;
    protected NewPerson maintainer;
    protected NewPerson steward;
    protected Subjects subjects;

    @BeforeEach
    void meet() {
        author = newPerson(Role.MEMBER);
        other = newPerson(Role.MEMBER);
        maintainer = newPerson(Role.MAINTAINER);
        steward = newPerson(Role.STEWARD);
        subjects = new Subjects(context(), author, other, maintainer, steward);
    }

    /** What the table should say of an answer. */
    static String outcome(HttpResponse<String> answer) {
        String location = answer.headers().firstValue("Location").orElse("");
        boolean signIn = answer.statusCode() == 303
                && !location.isEmpty()
                && URI.create(location).getPath().equals("/sign-in");
        return signIn ? "sign-in" : String.valueOf(answer.statusCode());
    }

    protected final void compare(RouteTable.Line line, String caller, String expected, HttpResponse<String> answer) {
        String got = outcome(answer);
        if (!got.equals(expected)) {
            surprises.add(line + " as " + caller + " gave " + got + " instead of " + expected);
        }
        // Whoever is refused changes nothing, so that the next caller finds the subject as it was.
        if (!line.method().equals("GET") && answer.statusCode() < 400 && !got.equals("sign-in")) {
            subjects.forget();
        }
    }

    protected final List<String> surprises() {
        return surprises;
    }

    /** A network for one call: all come from one machine, and how often it may ask is not looked at here. */
    static String network() {
        int number = NETWORK.incrementAndGet();
        return "198.18." + number / 256 % 256 + "." + number % 256;
    }
}
