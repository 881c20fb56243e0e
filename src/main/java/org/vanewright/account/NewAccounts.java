package org.vanewright.account;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.account.Joining.Details;
import org.vanewright.engineering.input.Checks;

/** Makes accounts of what people say of themselves. */
@Component
class NewAccounts {
    private final PersonRepository people;
    private final ProviderIdentityRepository identities;
    private final PersonRules rules;
    private final Passwords passwords;
    private final Clock clock;

    NewAccounts(
            PersonRepository people,
            ProviderIdentityRepository identities,
            PersonRules rules,
            Passwords passwords,
            Clock clock) {
        this.people = people;
        this.identities = identities;
        this.rules = rules;
        this.passwords = passwords;
        this.clock = clock;
    }

    /** @throws org.vanewright.engineering.input.InvalidInputException where the details cannot be used */
    Person checked(Details details, Role role, PersonState state) {
        String email = String.valueOf(EmailAddress.of(details.email()).orElse(""));
        String name = details.name() == null ? "" : details.name().strip();
        Checks checks = new Checks();
        rules.email(checks, details.email());
        rules.name(checks, details.name());
        if (details.provider() == null) {
            rules.password(checks, "newPassword", details.password(), email, name);
        }
        checks.throwIfAny();
        return new Person(
                UUID.randomUUID().toString(),
                email,
                name,
                role,
                state,
                null,
                1,
                clock.instant().truncatedTo(ChronoUnit.MICROS),
                null);
    }

    /** Of the password; null for who signs in by a provider. */
    @Nullable
    String hash(Details details) {
        return details.provider() == null ? passwords.hash(details.password()) : null;
    }

    /** Within the caller's transaction; false where the address or the account at the provider is known. */
    boolean add(Person person, @Nullable String hash, Details details) {
        ProviderIdentity provider = details.provider();
        boolean taken = provider != null
                && identities.find(provider.issuer(), provider.subject()).isPresent();
        if (taken || !people.add(person, hash)) {
            return false;
        }
        if (provider != null && !identities.add(person.id(), provider, person.createdAt())) {
            throw new IllegalStateException("two at once with one account at a provider");
        }
        return true;
    }

    /** By which provider the person signs in, for the log. */
    static String by(Details details) {
        ProviderIdentity provider = details.provider();
        return provider == null ? "" : "by " + provider.provider();
    }
}
