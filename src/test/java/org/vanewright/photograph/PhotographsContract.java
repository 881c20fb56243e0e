package org.vanewright.photograph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.vanewright.testing.Pictures.encoded;
import static org.vanewright.testing.Pictures.quarters;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.attachment.Attachments;
import org.vanewright.record.Actor;
import org.vanewright.record.NotAllowedException;
import org.vanewright.record.Power;
import org.vanewright.record.SignInNeededException;
import org.vanewright.record.photograph.PhotographUse;
import org.vanewright.testing.Databases;

/** Who may keep and see photographs, on one kind of database. */
abstract class PhotographsContract {
    private static final Actor MEMBER = new Actor("member", "Member", Set.of(Power.READ_OWN, Power.SUBMIT));
    private static final Actor OTHER = new Actor("other", "Other", Set.of(Power.READ_OWN, Power.SUBMIT));
    private static final Actor MAINTAINER =
            new Actor("maintainer", "Maintainer", Set.of(Power.READ_OWN, Power.SUBMIT, Power.REVIEW));
    private static final Actor COAUTHOR = new Actor("coauthor", "Co-author", Set.of(Power.READ_OWN, Power.SUBMIT));
    private static final Actor READER = new Actor("reader", "Reader", Set.of(Power.READ_OWN));
    private static final Actor WRITER_ONLY = new Actor("member", "Member", Set.of(Power.SUBMIT));

    private final HikariDataSource source;
    private final PhotographRepository repository;
    private final Photographs photographs;
    private Actor actor = MEMBER;
    private String inDraft = "";

    PhotographsContract(Databases.Engine engine) {
        this(engine, Attachments.IN_ROWS);
    }

    PhotographsContract(Databases.Engine engine, Attachments attachments) {
        source = Databases.migrated(engine);
        repository = new PhotographRepository(JdbcClient.create(source), attachments);
        Clock clock = Clock.fixed(Instant.parse("2026-05-17T10:00:00Z"), ZoneOffset.UTC);
        photographs = new Photographs(
                repository, (person, word) -> person.equals("coauthor") && word.equals(inDraft), () -> actor, clock);
    }

    @BeforeEach
    void asMember() {
        actor = MEMBER;
    }

    final JdbcClient database() {
        return JdbcClient.create(source);
    }

    @AfterEach
    void close() {
        source.close();
    }

    private static byte[] file(int width) {
        return encoded(quarters(width, 40), "png");
    }

    private boolean seesIt(Actor who, String sha256) {
        actor = who;
        Optional<Photographs.Served> large = photographs.find(sha256, false);
        assertThat(photographs.find(sha256, true).isPresent()).isEqualTo(large.isPresent());
        return large.isPresent();
    }

    @Test
    void aPhotographIsNamedByItsHashAndKeptAsItWasMade() {
        String sha256 = photographs.take(file(600));

        Picture made = PictureMaker.make(file(600));
        assertThat(photographs.find(sha256, false).orElseThrow().jpeg()).isEqualTo(made.large());
        assertThat(photographs.find(sha256, true).orElseThrow().jpeg()).isEqualTo(made.small());
        assertThat(photographs.take(file(600))).as("once more").isEqualTo(sha256);
    }

    @Test
    void aPictureOfTheMostBytesIsKept() {
        byte[] bytes = new byte[PictureMaker.MOST_BYTES];
        repository.add("a".repeat(64), new Picture(bytes, bytes), Instant.EPOCH);

        assertThat(repository.bytes("a".repeat(64), false).orElseThrow()).hasSize(bytes.length);
    }

    @Test
    void untilItIsPublicOnlyWhoAddedItAndReviewersSeeIt() {
        String sha256 = photographs.take(file(41));

        assertThat(seesIt(MEMBER, sha256)).isTrue();
        assertThat(seesIt(MAINTAINER, sha256)).isTrue();
        assertThat(seesIt(OTHER, sha256)).isFalse();
        assertThat(seesIt(Actor.visitor(), sha256)).isFalse();
        assertThat(seesIt(WRITER_ONLY, sha256)).as("a token that may not read").isFalse();

        photographs.makePublic(List.of(sha256));
        assertThat(List.of(MEMBER, MAINTAINER, OTHER, Actor.visitor(), WRITER_ONLY))
                .allMatch(who -> seesIt(who, sha256));
        assertThat(photographs.find(sha256, false).orElseThrow().isPublic()).isTrue();
    }

    @Test
    void whoWritesADraftThatShowsItSeesIt() {
        String sha256 = photographs.take(file(47));
        assertThat(seesIt(COAUTHOR, sha256)).isFalse();

        inDraft = sha256;
        assertThat(seesIt(COAUTHOR, sha256)).isTrue();
        assertThat(seesIt(OTHER, sha256)).isFalse();
    }

    @Test
    void whoAddsTheSamePictureSeesItToo() {
        String sha256 = photographs.take(file(42));
        actor = OTHER;
        assertThat(photographs.take(file(42))).isEqualTo(sha256);

        assertThat(seesIt(OTHER, sha256)).isTrue();
        assertThat(seesIt(MEMBER, sha256)).isTrue();
    }

    @Test
    void onlyWhoMaySubmitAddsAny() {
        actor = Actor.visitor();
        assertThatThrownBy(() -> photographs.take(file(43))).isInstanceOf(SignInNeededException.class);
        actor = READER;
        assertThatThrownBy(() -> photographs.take(file(43))).isInstanceOf(NotAllowedException.class);
    }

    @Test
    void onePersonKeepsSoManyAndNoMore() {
        Picture picture = PictureMaker.make(file(44));
        for (int i = 0; i < Photographs.MOST_A_PERSON; i++) {
            String sha256 = String.format(Locale.ROOT, "%064d", i);
            repository.add(sha256, picture, Instant.EPOCH);
            repository.own(sha256, "member", Instant.EPOCH);
        }

        assertThatThrownBy(() -> photographs.take(file(45)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("at most " + Photographs.MOST_A_PERSON);
        actor = OTHER;
        assertThat(photographs.take(file(45))).hasSize(64);
    }

    @Test
    void photographsThatAreNotHereAreNamed() {
        String sha256 = photographs.take(file(46));
        List<PhotographUse> uses =
                List.of(new PhotographUse(sha256, null, "A wing"), new PhotographUse("b".repeat(64), null, "Another"));

        assertThat(photographs.missing(uses)).extracting(FieldProblem::field).containsExactly("photographs[1].sha256");
        assertThat(photographs.missing(List.of())).isEmpty();
        photographs.makePublic(List.of());
    }
}
