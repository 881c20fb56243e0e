package org.vanewright.account;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.security.oauth2.client.web.DefaultOAuth2AuthorizationRequestResolver;
import org.springframework.security.oauth2.client.web.OAuth2AuthorizationRequestResolver;
import org.springframework.security.oauth2.core.endpoint.OAuth2AuthorizationRequest;

/** Leads to providers that are known and answer; any other address is as if it were not there. */
final class KnownProviders implements OAuth2AuthorizationRequestResolver {
    private final OAuth2AuthorizationRequestResolver requests;

    KnownProviders(Providers providers) {
        requests = new DefaultOAuth2AuthorizationRequestResolver(providers::registration, "/oauth2/authorization");
    }

    @Override
    public @Nullable OAuth2AuthorizationRequest resolve(HttpServletRequest request) {
        try {
            return requests.resolve(request);
        } catch (IllegalArgumentException e) {
            return null; // no such provider
        }
    }

    @Override
    public @Nullable OAuth2AuthorizationRequest resolve(HttpServletRequest request, String id) {
        return requests.resolve(request, id);
    }
}
