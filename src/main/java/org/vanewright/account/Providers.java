package org.vanewright.account;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.security.oauth2.client.autoconfigure.OAuth2ClientProperties;
import org.springframework.boot.security.oauth2.client.autoconfigure.OAuth2ClientPropertiesMapper;
import org.springframework.security.oauth2.client.registration.ClientRegistration;
import org.springframework.stereotype.Component;

/**
 * OpenID providers that people may sign in with, as {@code spring.security.oauth2.client} has them. Each is asked for
 * its addresses when somebody first wants to go there, so that the service starts and runs while one is down.
 */
@Component
@EnableConfigurationProperties(OAuth2ClientProperties.class)
public class Providers {
    private static final Logger LOG = LoggerFactory.getLogger(Providers.class);
    private static final Pattern ID = Pattern.compile("[a-z0-9-]{1,40}");
    private static final int LONGEST_NAME = 80;
    private static final String CALLBACK = "/login/oauth2/code/";
    private static final String OPENID = "openid";

    private final OAuth2ClientProperties settings;
    private final BaseUrl baseUrl;
    private final Map<String, ClientRegistration> known = new ConcurrentHashMap<>();

    Providers(OAuth2ClientProperties settings, BaseUrl baseUrl) {
        this.settings = settings;
        this.baseUrl = baseUrl;
        settings.getRegistration().forEach(this::check);
    }

    /**
     * One of them.
     *
     * @param id in addresses
     * @param name on pages
     * @param issuer as its identities name it
     */
    public record Provider(String id, String name, String issuer) {}

    /** In the order of their ids. */
    public List<Provider> all() {
        return settings.getRegistration().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(e -> provider(e.getKey(), e.getValue()))
                .toList();
    }

    public Optional<Provider> find(String id) {
        return Optional.ofNullable(settings.getRegistration().get(id)).map(r -> provider(id, r));
    }

    /** Whether that one answers, or has answered. */
    public boolean reachable(Provider provider) {
        return registration(provider.id()) != null;
    }

    /** Null for one that is unknown or does not answer. */
    @Nullable
    ClientRegistration registration(String id) {
        if (find(id).isEmpty()) {
            return null;
        }
        try {
            return known.computeIfAbsent(id, this::discovered);
        } catch (RuntimeException e) {
            LOG.warn("the provider {} does not say how to sign in there: {}", id, String.valueOf(e.getMessage()));
            return null;
        }
    }

    private ClientRegistration discovered(String id) {
        OAuth2ClientProperties.Registration registration =
                settings.getRegistration().get(id);
        if (registration == null) {
            throw new IllegalStateException("no provider " + id);
        }
        OAuth2ClientProperties one = new OAuth2ClientProperties();
        one.getRegistration().put(id, registration);
        one.getProvider().putAll(settings.getProvider());
        ClientRegistration found =
                new OAuth2ClientPropertiesMapper(one).asClientRegistrations().get(id);
        if (found == null) {
            throw new IllegalStateException("no way to sign in with " + id);
        }
        Set<String> scopes = found.getScopes();
        return ClientRegistration.withClientRegistration(found)
                .clientName(name(id, registration))
                .scope(scopes == null || scopes.isEmpty() ? Set.of(OPENID, "profile", "email") : scopes)
                .redirectUri(baseUrl.of(CALLBACK + id))
                .build();
    }

    private static String name(String id, OAuth2ClientProperties.Registration registration) {
        String name = registration.getClientName();
        String shown = name == null || name.isBlank() ? id : name.strip();
        return shown.length() <= LONGEST_NAME ? shown : shown.substring(0, LONGEST_NAME);
    }

    private Provider provider(String id, OAuth2ClientProperties.Registration registration) {
        return new Provider(id, name(id, registration), String.valueOf(issuer(id, registration)));
    }

    private @Nullable String issuer(String id, OAuth2ClientProperties.Registration registration) {
        OAuth2ClientProperties.Provider provider = settings.getProvider().get(named(id, registration));
        return provider == null ? null : provider.getIssuerUri();
    }

    private static String named(String id, OAuth2ClientProperties.Registration registration) {
        String named = registration.getProvider();
        return named == null ? id : named;
    }

    /** A provider without an issuer could answer in the name of another one. */
    private void check(String id, OAuth2ClientProperties.Registration registration) {
        boolean openid = registration.getScope() == null
                || registration.getScope().isEmpty()
                || registration.getScope().contains(OPENID);
        if (!ID.matcher(id).matches() || issuer(id, registration) == null || !openid) {
            throw new IllegalStateException("spring.security.oauth2.client.registration." + id
                    + " needs an id of small letters, digits and hyphens, the scope openid, and"
                    + " spring.security.oauth2.client.provider." + named(id, registration) + ".issuer-uri");
        }
    }
}
