package org.vanewright.account;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.net.URI;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.oauth2.client.authentication.OAuth2AuthenticationToken;
import org.springframework.security.oauth2.core.OAuth2AuthenticationException;
import org.springframework.security.oauth2.core.oidc.user.OidcUser;
import org.springframework.security.web.authentication.AuthenticationFailureHandler;
import org.springframework.security.web.authentication.AuthenticationSuccessHandler;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.stereotype.Component;
import org.springframework.web.util.UriComponentsBuilder;
import org.vanewright.account.ProviderErrands.Errand;
import org.vanewright.account.ProviderErrands.Purpose;
import org.vanewright.account.ProviderIdentity.Newcomer;
import org.vanewright.platform.page.LocalPath;

/**
 * Takes in who comes back from a provider. By then Spring Security has checked state, nonce, signature, issuer, audience
 * and expiry; that somebody has an account there makes them nobody here.
 */
@Component
class ProviderReturn implements AuthenticationSuccessHandler, AuthenticationFailureHandler {
    private static final int LONGEST_CLAIM = 254;
    private static final int LONGEST_SUBJECT = 255;
    private static final int LONGEST_ISSUER = 500;

    private final Providers providers;
    private final ProviderSignIn signIn;
    private final ProviderErrands errands;
    private final Joining joining;
    private final SecondFactorCheck secondFactor;
    private final HalfSignIns half;
    private final Sessions sessions;
    private final SecurityContextRepository contexts;
    private final PersonRepository people;

    ProviderReturn(
            Providers providers,
            ProviderSignIn signIn,
            ProviderErrands errands,
            Joining joining,
            SecondFactorCheck secondFactor,
            HalfSignIns half,
            Sessions sessions,
            SecurityContextRepository contexts,
            PersonRepository people) {
        this.providers = providers;
        this.signIn = signIn;
        this.errands = errands;
        this.joining = joining;
        this.secondFactor = secondFactor;
        this.half = half;
        this.sessions = sessions;
        this.contexts = contexts;
        this.people = people;
    }

    @Override
    public void onAuthenticationSuccess(
            HttpServletRequest request, HttpServletResponse response, Authentication authentication) {
        SecurityContextHolder.clearContext();
        CurrentActors.forget();
        Errand errand = errands.take(request);
        Optional<Newcomer> vouched = vouched(authentication);
        if (vouched.isEmpty()) {
            signIn.refused("a provider", null, "not usable");
            lead(response, signInPage("failed"));
        } else if (errand.purpose() == Purpose.LINK) {
            lead(response, URI.create(linked(request, errand, vouched.get().identity())));
        } else {
            lead(response, arrived(request, response, errand, vouched.get()));
        }
    }

    @Override
    public void onAuthenticationFailure(
            HttpServletRequest request, HttpServletResponse response, AuthenticationException failure) {
        Errand errand = errands.take(request);
        String reason = failure instanceof OAuth2AuthenticationException oauth
                ? oauth.getError().getErrorCode()
                : failure.getClass().getSimpleName();
        String id = request.getRequestURI().substring(request.getRequestURI().lastIndexOf('/') + 1);
        String provider = providers.find(id).map(Providers.Provider::name).orElse("a provider");
        signIn.refused(provider, null, reason);
        lead(
                response,
                errand.purpose() == Purpose.LINK ? URI.create("/account/providers?link=failed") : signInPage("failed"));
    }

    private URI arrived(HttpServletRequest request, HttpServletResponse response, Errand errand, Newcomer vouched) {
        Optional<Person> owner = signIn.owner(vouched.identity());
        if (owner.isEmpty()) {
            return unknown(request, errand, vouched);
        }
        Person person = owner.get();
        if (!person.active()) {
            String state = person.state() == PersonState.PENDING ? "waiting" : "closed";
            signIn.refused(vouched.identity().provider(), person, state);
            return signInPage(state);
        }
        String back = errand.purpose() == Purpose.SIGN_IN ? LocalPath.orHome(errand.detail()) : "/";
        String how = vouched.identity().provider();
        if (secondFactor.needed(person)) {
            half.begin(request, person, how);
            return UriComponentsBuilder.fromPath("/sign-in/code")
                    .queryParam("back", "{back}")
                    .build(back);
        }
        half.forget(request);
        errands.forgetNewcomer(request);
        sessions.begin(request, response, person, how);
        return URI.create(back);
    }

    /** Somebody new may join where the instance lets anybody ask, or by the invitation they came with. */
    private URI unknown(HttpServletRequest request, Errand errand, Newcomer vouched) {
        if (errand.purpose() == Purpose.JOIN
                && joining.invitation(errand.detail()).isPresent()) {
            errands.remember(request, vouched);
            return URI.create("/join/" + errand.detail() + "/details");
        }
        if (joining.registeringIsOpen()) {
            errands.remember(request, vouched);
            return URI.create("/join/details");
        }
        signIn.refused(vouched.identity().provider(), null, "not linked with an account");
        return signInPage("unknown");
    }

    /** Only in the session of who asked for it, so that nobody's account is linked from elsewhere. */
    private String linked(HttpServletRequest request, Errand errand, ProviderIdentity identity) {
        boolean same =
                contexts.loadDeferredContext(request).get().getAuthentication() instanceof PersonAuthentication person
                        && person.personId().equals(errand.detail());
        Optional<Person> me = same ? people.find(errand.detail()).filter(Person::active) : Optional.empty();
        if (me.isEmpty()) {
            return "/sign-in";
        }
        return signIn.link(me.get(), identity) ? "/account/providers?link=done" : "/account/providers?link=taken";
    }

    private Optional<Newcomer> vouched(Authentication authentication) {
        if (!(authentication instanceof OAuth2AuthenticationToken token)
                || !(token.getPrincipal() instanceof OidcUser user)) {
            return Optional.empty();
        }
        String issuer = String.valueOf(user.getIssuer());
        String subject = user.getSubject();
        if (subject == null || subject.length() > LONGEST_SUBJECT || issuer.length() > LONGEST_ISSUER) {
            return Optional.empty();
        }
        return providers
                .find(token.getAuthorizedClientRegistrationId())
                .map(provider -> new Newcomer(
                        new ProviderIdentity(issuer, subject, provider.name()),
                        claim(user.getEmail()),
                        claim(user.getFullName())));
    }

    private static String claim(@Nullable String text) {
        return text == null || text.length() > LONGEST_CLAIM ? "" : text;
    }

    private static URI signInPage(String provider) {
        return URI.create("/sign-in?provider=" + provider);
    }

    private static void lead(HttpServletResponse response, URI to) {
        response.setStatus(HttpServletResponse.SC_SEE_OTHER);
        response.setHeader(HttpHeaders.LOCATION, to.toString());
    }
}
