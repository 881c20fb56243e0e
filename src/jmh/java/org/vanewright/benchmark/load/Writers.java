package org.vanewright.benchmark.load;

import java.net.http.HttpResponse;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.jsoup.nodes.Element;
import org.vanewright.account.BulkPeople;
import org.vanewright.account.NewPeople;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.load.CatalogueSize;
import org.vanewright.load.LargeCatalogue.Kind;
import org.vanewright.record.CanonicalJson;

/**
 * Members write by programs with tokens they have made; maintainers publish on the page with the token of their session.
 * Both have signed in with their passwords.
 */
final class Writers {
    private static final int MAINTAINERS_EVERY = 40;

    private final String origin;
    private final CatalogueSize size;
    private final CanonicalJson json = new CanonicalJson();
    private final Map<Visitor, Pair> pairs = new ConcurrentHashMap<>();
    private final AtomicInteger written = new AtomicInteger();
    private final Recorder recorder;
    private final String run = Long.toString(System.currentTimeMillis(), 36);

    /** Of one client. */
    private record Pair(String bearer, Visitor maintainer, String token) {}

    Writers(String origin, CatalogueSize size, Recorder recorder) {
        this.origin = origin;
        this.size = size;
        this.recorder = recorder;
    }

    /** A draft saved, submitted and published. */
    void once(Visitor visitor) {
        Pair pair = pairs.computeIfAbsent(visitor, v -> signedIn(pairs.size()));
        int number = written.getAndIncrement();
        LayoutDocument layout = (LayoutDocument) Kind.LAYOUT.documents(size).apply(number % size.layouts());
        String text = json.write(new LayoutDocument(
                "Written under load " + run + " " + number,
                layout.description(),
                layout.airframe(),
                layout.rows(),
                true));
        HttpResponse<byte[]> saved =
                visitor.postJson("write: draft saved", "/api/v1/layouts", text, pair.bearer(), 201);
        String draft = lastOf(saved, "^.*/");
        HttpResponse<byte[]> submitted = visitor.postJson(
                "write: submitted",
                "/api/v1/drafts/" + draft + "/submission",
                "{\"version\":1,\"licence\":\"CC_BY_SA_4_0\"}",
                pair.bearer(),
                201);
        String slug = lastOf(submitted, "^.*/layouts/").replaceFirst("/.*$", "");
        pair.maintainer()
                .postForm(
                        "write: published",
                        "/review/layouts/" + slug + "/1/publish",
                        Map.of("_csrf", pair.token()),
                        302);
    }

    private static String lastOf(HttpResponse<byte[]> answer, String before) {
        return answer.headers()
                .firstValue("Location")
                .orElseThrow(() -> new IllegalStateException(Visitor.text(answer)))
                .replaceFirst(before, "");
    }

    private synchronized Pair signedIn(int number) {
        Visitor member = signIn(2 + number);
        Map<String, String> asked = Map.of(
                "_csrf",
                token(member, "/account/tokens"),
                "name",
                "Load " + UUID.randomUUID().toString().substring(0, 8),
                "read",
                "true",
                "submit",
                "true",
                "days",
                "30");
        HttpResponse<byte[]> made = member.postForm("sign-in: token", "/account/tokens", asked, 200);
        Element secret = org.jsoup.Jsoup.parse(Visitor.text(made)).getElementById("secret");
        if (secret == null) {
            throw new IllegalStateException("no token was made\n" + Visitor.text(made));
        }
        Visitor maintainer = signIn(1 + MAINTAINERS_EVERY * number);
        return new Pair("Bearer " + secret.text().strip(), maintainer, token(maintainer, "/account"));
    }

    private Visitor signIn(int person) {
        Visitor visitor = new Visitor(origin, person, recorder);
        visitor.postForm(
                "sign-in: password",
                "/sign-in",
                Map.of(
                        "_csrf",
                        token(visitor, "/sign-in"),
                        "email",
                        BulkPeople.email(person),
                        "password",
                        NewPeople.PASSWORD),
                303);
        return visitor;
    }

    private static String token(Visitor visitor, String path) {
        return visitor.page(path).select("input[name=_csrf]").attr("value");
    }
}
