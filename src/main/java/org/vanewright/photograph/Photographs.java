package org.vanewright.photograph;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.Downloads;
import org.vanewright.record.Actor;
import org.vanewright.record.Actors;
import org.vanewright.record.OwnDrafts;
import org.vanewright.record.Power;
import org.vanewright.record.photograph.PhotographIntake;
import org.vanewright.record.photograph.PhotographUse;

/**
 * Photographs. Until a public record shows one, only who added it, the authors of drafts that show it and reviewers see
 * it; for everybody else it does not exist.
 */
@Service
public class Photographs implements PhotographIntake {
    /** Photographs one person may keep here. */
    static final int MOST_A_PERSON = 300;

    private final PhotographRepository photographs;
    private final OwnDrafts drafts;
    private final Actors actors;
    private final Clock clock;

    Photographs(PhotographRepository photographs, OwnDrafts drafts, Actors actors, Clock clock) {
        this.photographs = photographs;
        this.drafts = drafts;
        this.actors = actors;
        this.clock = clock;
    }

    /**
     * A photograph to be served.
     *
     * @param jpeg its bytes
     * @param isPublic whether anybody may see it
     */
    @SuppressWarnings("ArrayRecordComponent") // bytes on their way out, never compared
    public record Served(byte[] jpeg, boolean isPublic) {}

    @Override
    public String take(byte[] content) {
        String person = actors.current().require(Power.SUBMIT);
        if (photographs.ownedBy(person) >= MOST_A_PERSON) {
            throw new InvalidInputException(new FieldProblem(
                    "photographs", "one more", "at most " + MOST_A_PERSON + " photographs of one person"));
        }
        Picture picture = PictureMaker.make(content);
        String sha256 = Downloads.sha256(picture.large());
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        photographs.add(sha256, picture, now);
        photographs.own(sha256, person, now);
        return sha256;
    }

    /**
     * Keeps a photograph as another instance has made it, for the person who asks.
     *
     * @param sha256 its name, which documents use, so that its bytes must stay
     * @throws InvalidInputException naming {@code photographs} for bytes of another name, or what this service would not
     *     have written
     */
    public void adopt(String sha256, byte[] jpeg) {
        String person = actors.current().require(Power.SUBMIT);
        if (!photographs.existing(Set.of(sha256)).isEmpty()) {
            return;
        }
        boolean plain =
                jpeg.length <= PictureMaker.MOST_BYTES && Downloads.sha256(jpeg).equals(sha256) && PlainJpeg.is(jpeg);
        if (!plain || photographs.ownedBy(person) >= MOST_A_PERSON) {
            throw new InvalidInputException(new FieldProblem(
                    "photographs",
                    plain ? "one more" : "a picture with more than its pixels, or of another SHA-256",
                    "a JPEG as this service writes it, and at most " + MOST_A_PERSON + " of one person"));
        }
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        photographs.add(sha256, PictureMaker.adopted(jpeg), now);
        photographs.own(sha256, person, now);
    }

    /** The photograph of that name, if the one who asks may see it. */
    public Optional<Served> find(String sha256, boolean small) {
        Optional<Boolean> isPublic = photographs.isPublic(sha256);
        if (isPublic.isEmpty() || !isPublic.get() && !mayBeSeen(sha256)) {
            return Optional.empty();
        }
        return photographs.bytes(sha256, small).map(jpeg -> new Served(jpeg, isPublic.get()));
    }

    private boolean mayBeSeen(String sha256) {
        Actor actor = actors.current();
        String id = actor.id();
        return actor.may(Power.REVIEW)
                || id != null
                        && actor.may(Power.READ_OWN)
                        && (photographs.isOwner(sha256, id) || drafts.mention(id, sha256));
    }

    /** The photograph of a revision that the one who asks may see. */
    public Optional<byte[]> ofSeen(PhotographUse use) {
        return Optional.ofNullable(use.sha256()).flatMap(sha256 -> photographs.bytes(sha256, false));
    }

    /** A problem for each photograph that a document names and that is not here. */
    public List<FieldProblem> missing(List<PhotographUse> uses) {
        Set<String> here = photographs.existing(hashes(uses));
        List<FieldProblem> problems = new ArrayList<>();
        for (int i = 0; i < uses.size(); i++) {
            String sha256 = uses.get(i).sha256();
            if (sha256 != null && !here.contains(sha256)) {
                problems.add(
                        new FieldProblem("photographs[" + i + "].sha256", sha256, "a photograph that is kept here"));
            }
        }
        return problems;
    }

    /** Shows them to everybody from now on. Called for those of a record that becomes public. */
    public void makePublic(Collection<String> hashes) {
        photographs.makePublic(Set.copyOf(hashes));
    }

    static List<String> hashes(List<PhotographUse> uses) {
        return uses.stream()
                .map(PhotographUse::sha256)
                .filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .distinct()
                .toList();
    }
}
