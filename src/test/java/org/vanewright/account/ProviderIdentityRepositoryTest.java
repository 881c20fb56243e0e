package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.vanewright.account.ProviderIdentity.Linked;
import org.vanewright.testing.Databases.Engine;

class ProviderIdentityRepositoryTest {
    private static final String ISSUER = "https://pass.club.example";
    private static final Instant NOW = Instant.parse("2026-03-01T09:00:00.123456Z");
    private static final int MANY = 6;

    @ParameterizedTest
    @EnumSource
    void anIdentityBelongsToOnePersonAndAPersonHasOneOfEachIssuer(Engine engine) throws Exception {
        try (Bench bench = new Bench(engine)) {
            Person kim = bench.add(Role.MEMBER, PersonState.ACTIVE);
            Person lou = bench.add(Role.MEMBER, PersonState.ACTIVE);
            ProviderIdentity one = new ProviderIdentity(ISSUER, "one", "Club pass");
            assertThat(AtOnce.successes(MANY, () -> bench.identities.add(kim.id(), one, NOW)))
                    .isEqualTo(1);
            assertThat(bench.identities.add(lou.id(), one, NOW)).isFalse();
            assertThat(bench.identities.add(kim.id(), new ProviderIdentity(ISSUER, "two", "Club pass"), NOW))
                    .isFalse();
            Linked linked = bench.identities.find(ISSUER, "one").orElseThrow();
            assertThat(linked).isEqualTo(new Linked(linked.id(), kim.id(), one, NOW, null));
            bench.identities.used(linked.id(), NOW.plusSeconds(5));
            assertThat(bench.identities.of(kim.id()))
                    .containsExactly(new Linked(linked.id(), kim.id(), one, NOW, NOW.plusSeconds(5)));
            assertThat(bench.identities.find(ISSUER, "ONE"))
                    .as("as the provider writes it")
                    .isEmpty();
            assertThat(bench.identities.remove(lou.id(), linked.id())).isFalse();
            assertThat(bench.identities.remove(kim.id(), linked.id())).isTrue();
            assertThat(bench.identities.find(ISSUER, "one")).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void theOnlyWayInIsNotRemoved(Engine engine) {
        try (Bench bench = new Bench(engine)) {
            Person kim = NewPeople.person(Role.MEMBER, PersonState.ACTIVE);
            bench.people.add(kim, null);
            bench.identities.add(kim.id(), new ProviderIdentity(ISSUER, "one", "Club pass"), NOW);
            String id = bench.identities.find(ISSUER, "one").orElseThrow().id();
            assertThat(bench.identities.remove(kim.id(), id)).isFalse();
            bench.people.changePassword(kim.id(), "hash");
            assertThat(bench.identities.remove(kim.id(), id)).isTrue();
        }
    }

    @ParameterizedTest
    @EnumSource
    void peoplePageByNameWithoutLosingAnybody(Engine engine) {
        try (Bench bench = new Bench(engine)) {
            for (String name : new String[] {"Éva", "eva", "Zoe", "zoe", "Abe", "Kim 100%", "Kim"}) {
                Person p = NewPeople.person(Role.MEMBER, PersonState.ACTIVE);
                bench.people.add(
                        new Person(p.id(), p.email(), name, p.role(), p.state(), null, 1, p.createdAt(), null), null);
            }
            @Nullable PersonCursor after = null;
            List<Person> seen = new ArrayList<>();
            List<Person> page;
            do {
                page = bench.people.page(null, "", after, 2);
                seen.addAll(page);
                after = page.isEmpty() ? null : PersonCursor.of(page.get(page.size() - 1));
            } while (page.size() == 2);
            assertThat(seen).containsExactlyElementsOf(bench.people.all()).hasSize(7);
            assertThat(bench.people.page(null, "100%", null, 9))
                    .extracting(Person::name)
                    .containsExactly("Kim 100%");
            assertThat(bench.people.page(PersonState.CLOSED, "", null, 9)).isEmpty();
            assertThat(PersonCursor.decode(PersonCursor.of(seen.get(0)).encode()))
                    .isEqualTo(PersonCursor.of(seen.get(0)));
        }
    }
}
