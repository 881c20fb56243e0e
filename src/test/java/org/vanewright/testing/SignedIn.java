package org.vanewright.testing;

import java.net.http.HttpResponse;
import java.util.Map;
import org.vanewright.account.NewPeople.NewPerson;

/** Calls the service as a person who has signed in. */
public final class SignedIn extends Caller {
    private final NewPerson person;
    private boolean inside;

    SignedIn(String origin, NewPerson person) {
        super(origin);
        this.person = person;
        HttpResponse<String> response =
                postForm("/sign-in", Map.of("email", person.email(), "password", person.password()));
        if (response.statusCode() != 303) {
            throw new AssertionError("signing in gave " + response.statusCode() + "\n" + response.body());
        }
        inside = true;
        forgetToken();
    }

    public NewPerson person() {
        return person;
    }

    public String id() {
        return person.id();
    }

    public String name() {
        return person.name();
    }

    @Override
    String pageWithForm() {
        return inside ? "/account" : super.pageWithForm();
    }
}
