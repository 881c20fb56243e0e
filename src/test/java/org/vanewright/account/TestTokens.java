package org.vanewright.account;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.context.annotation.Fallback;
import org.springframework.stereotype.Component;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.record.Power;

/** Tokens for tests, each good for all that its owner may do but running the service. */
@Component
@Fallback
public class TestTokens implements TokenSignIn {
    private final Map<String, Holder> holders = new ConcurrentHashMap<>();

    @Override
    public Optional<Holder> find(String token) {
        return Optional.ofNullable(holders.get(token));
    }

    /** A fresh token of that person. */
    public String add(NewPerson person) {
        String token = "test-" + UUID.randomUUID();
        holders.put(
                token, new Holder(person.id(), Set.of(Power.READ_OWN, Power.SUBMIT, Power.REVIEW)));
        return token;
    }
}
