package org.vanewright.account;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpMethod;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.AnonymousAuthenticationFilter;
import org.springframework.security.web.context.NullSecurityContextRepository;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.security.web.csrf.CsrfTokenRepository;
import org.springframework.security.web.csrf.HttpSessionCsrfTokenRepository;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import org.vanewright.platform.LargeUploads;
import org.vanewright.platform.Refusals;

/**
 * Finds out who is asking. What they may do is decided by the services. Headers are set by {@code
 * platform.SecurityHeaders}, on errors of the server itself, too.
 */
@Configuration(proxyBeanMethods = false)
class SecurityConfiguration {
    @Bean
    CsrfTokenRepository csrfTokens() {
        return new HttpSessionCsrfTokenRepository();
    }

    /** Programs sign in by a token with each request; no session is read or made. */
    @Bean
    @Order(1)
    SecurityFilterChain programs(
            HttpSecurity http, Optional<TokenSignIn> tokens, AttemptLimits limits, Refusals refusals, Clock clock) {
        return bare(http.securityMatcher("/api/**"))
                .csrf(AbstractHttpConfigurer::disable)
                .sessionManagement(sessions -> sessions.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .securityContext(context -> context.securityContextRepository(new NullSecurityContextRepository()))
                .addFilterBefore(new BearerFilter(tokens, limits, refusals, clock), AnonymousAuthenticationFilter.class)
                .build();
    }

    /** People sign in by a session. The choice of units changes nothing but a cookie and works without one. */
    @Bean
    @Order(2)
    SecurityFilterChain pages(
            HttpSecurity http,
            SecurityContextRepository contexts,
            CsrfTokenRepository tokens,
            RefusedForms refused,
            Providers providers,
            ProviderReturn returned,
            List<LargeUploads> larger) {
        if (!providers.all().isEmpty()) {
            http.oauth2Login(login -> login.loginPage("/sign-in")
                    .clientRegistrationRepository(providers::registration)
                    .authorizationEndpoint(
                            endpoint -> endpoint.authorizationRequestResolver(new KnownProviders(providers)))
                    .authorizedClientRepository(new ForgottenTokens())
                    .successHandler(returned)
                    .failureHandler(returned));
        }
        var units = PathPatternRequestMatcher.withDefaults().matcher(HttpMethod.POST, "/units");
        return bare(http)
                .csrf(csrf -> csrf.csrfTokenRepository(tokens).ignoringRequestMatchers(units))
                .exceptionHandling(errors -> errors.accessDeniedHandler(refused))
                .securityContext(context -> context.securityContextRepository(contexts))
                .addFilterBefore(new UploadSize(larger), CsrfFilter.class)
                .build();
    }

    private static HttpSecurity bare(HttpSecurity http) {
        return http.authorizeHttpRequests(requests -> requests.anyRequest().permitAll())
                .headers(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                .logout(AbstractHttpConfigurer::disable);
    }
}
