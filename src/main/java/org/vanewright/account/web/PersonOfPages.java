package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.vanewright.account.InstanceSettings;
import org.vanewright.record.Actors;

/**
 * Gives every page, error pages included, {@code me}, who is asking, and {@code instance}, what stewards chose. A page made for somebody is kept by nobody, so that
 * it cannot be gone back to after signing out.
 */
@Component
class PersonOfPages implements HandlerInterceptor, WebMvcConfigurer {
    private final Actors actors;
    private final InstanceSettings instance;

    PersonOfPages(Actors actors, InstanceSettings instance) {
        this.actors = actors;
        this.instance = instance;
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this).excludePathPatterns("/api/**");
    }

    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
        if (handler instanceof HandlerMethod) {
            request.setAttribute("me", actors.current());
            request.setAttribute("instance", instance);
        }
        return true;
    }

    @Override
    public void postHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler, @Nullable ModelAndView page) {
        if (page != null && actors.current().signedIn()) {
            response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
        }
    }
}
