package org.vanewright.account;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.nimbusds.jose.JOSEException;
import com.nimbusds.jose.JWSAlgorithm;
import com.nimbusds.jose.JWSHeader;
import com.nimbusds.jose.crypto.RSASSASigner;
import com.nimbusds.jose.jwk.JWKSet;
import com.nimbusds.jose.jwk.RSAKey;
import com.nimbusds.jose.jwk.gen.RSAKeyGenerator;
import com.nimbusds.jwt.JWTClaimsSet;
import com.nimbusds.jwt.SignedJWT;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.web.util.UriComponentsBuilder;
import tools.jackson.databind.json.JsonMapper;

/** An OpenID provider on this machine that says of anybody whatever a test wants. */
final class FakeProvider implements AutoCloseable {
    static final String CLIENT = "vanewright-test";

    private final JsonMapper mapper = new JsonMapper();
    private final Map<String, String> tokens = new ConcurrentHashMap<>();
    private final HttpServer server;
    private final RSAKey key = newKey();
    private final RSAKey otherKey = newKey();

    FakeProvider() {
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        server.createContext("/.well-known/openid-configuration", exchange -> answer(exchange, metadata()));
        server.createContext("/keys", exchange -> answer(exchange, new JWKSet(key.toPublicJWK()).toJSONObject()));
        server.createContext("/token", this::token);
        server.start();
    }

    String issuer() {
        return "http://localhost:" + server.getAddress().getPort();
    }

    /** What an honest provider says of that account. */
    JWTClaimsSet claims(String subject, String nonce) {
        Instant now = Instant.now();
        return new JWTClaimsSet.Builder()
                .issuer(issuer())
                .audience(CLIENT)
                .subject(subject)
                .issueTime(Date.from(now))
                .expirationTime(Date.from(now.plusSeconds(300)))
                .claim("nonce", nonce)
                .claim("name", "Kim of the club")
                .claim("email", "kim." + subject + "@club.example")
                .build();
    }

    /** A code for which the service gets those claims. */
    String code(JWTClaimsSet claims) {
        return codeSigned(claims, key);
    }

    /** As {@link #code}, signed by somebody else under the same key's name. */
    String forgedCode(JWTClaimsSet claims) {
        return codeSigned(claims, otherKey);
    }

    private String codeSigned(JWTClaimsSet claims, RSAKey by) {
        try {
            SignedJWT token = new SignedJWT(
                    new JWSHeader.Builder(JWSAlgorithm.RS256)
                            .keyID(key.getKeyID())
                            .build(),
                    claims);
            token.sign(new RSASSASigner(by));
            String code = UUID.randomUUID().toString();
            tokens.put(code, token.serialize());
            return code;
        } catch (JOSEException e) {
            throw new IllegalStateException(e);
        }
    }

    private void token(HttpExchange exchange) throws IOException {
        String body = new String(exchange.getRequestBody().readAllBytes(), UTF_8);
        String code = UriComponentsBuilder.fromUriString("?" + body)
                .build()
                .getQueryParams()
                .getFirst("code");
        String token = code == null ? null : tokens.remove(code);
        answer(
                exchange,
                token == null
                        ? Map.of("error", "invalid_grant")
                        : Map.of("access_token", "unused", "token_type", "Bearer", "id_token", token));
    }

    private Map<String, Object> metadata() {
        return Map.of(
                "issuer", issuer(),
                "authorization_endpoint", issuer() + "/authorize",
                "token_endpoint", issuer() + "/token",
                "jwks_uri", issuer() + "/keys",
                "subject_types_supported", List.of("public"),
                "response_types_supported", List.of("code"),
                "id_token_signing_alg_values_supported", List.of("RS256"));
    }

    private void answer(HttpExchange exchange, Map<String, Object> json) throws IOException {
        byte[] body = mapper.writeValueAsBytes(json);
        exchange.getResponseHeaders().set("Content-Type", "application/json");
        exchange.sendResponseHeaders(json.containsKey("error") ? 400 : 200, body.length);
        try (exchange) {
            exchange.getResponseBody().write(body);
        }
    }

    private static RSAKey newKey() {
        try {
            return new RSAKeyGenerator(2048).keyID("one").generate();
        } catch (JOSEException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
